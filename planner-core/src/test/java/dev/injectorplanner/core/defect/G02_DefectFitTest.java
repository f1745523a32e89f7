package dev.injectorplanner.core.defect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.condition.DrawnTrack;
import dev.injectorplanner.core.condition.SignTrack;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.life.WeibullLife;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lives drawn from a known truth, week by week: the fit finds it again, and the chances of a defect are those of the draws. */
class G02_DefectFitTest {
    private static final double USE = 1_500;
    private static final double DELAY = 15_000;
    private static final double SHOWN = 0.4;
    private static final double FALSE = 0.02;
    private static final double HAZARD = 1 / 150_000.0;
    private static final int WEEKS = 104;

    private final Random random = new Random(11);
    private final PredictiveLife life = PredictiveLife.certain(new WeibullLife(1, 1 / HAZARD));
    private int defective;

    private WatchedLife drawn() {
        byte[] days = new byte[WEEKS];
        boolean defect = false;
        for (int week = 0; week < WEEKS; week++) {
            boolean fails = defect
                    ? random.nextDouble() < -Math.expm1(-USE / DELAY)
                    : random.nextDouble() < -Math.expm1(-0.1 * HAZARD * USE);
            if (fails) {
                return watched(Arrays.copyOf(days, week + 1), LifeEnd.FAILED);
            }
            defect |= random.nextDouble() < -Math.expm1(-0.9 * HAZARD * USE);
            days[week] = (byte) (random.nextDouble() < (defect ? SHOWN : FALSE) ? 1 : 0);
        }
        defective += defect ? 1 : 0;
        return watched(days, LifeEnd.IN_SERVICE);
    }

    private WatchedLife watched(byte[] days, LifeEnd end) {
        return new WatchedLife(life, 0, USE, 1, end, DrawnTrack.of(days));
    }

    @Test
    void theTruthIsFoundAgain() {
        List<WatchedLife> lives = new ArrayList<>();
        for (int i = 0; i < 4_000; i++) {
            lives.add(drawn());
        }
        DefectModel fitted = DefectFit.of(lives, DefectDefaults.STANDARD.model(1, USE));
        assertThat(fitted.meanDelay()).isCloseTo(DELAY, within(0.12 * DELAY));
        assertThat(fitted.defective().faultDays()[1]).isCloseTo(SHOWN, within(0.05));
        assertThat(fitted.sound().faultDays()[1]).isCloseTo(FALSE, within(0.004));
        assertThat(fitted.suddenShare()).isCloseTo(0.1, within(0.08));
        double expected = lives.stream()
                .filter(each -> each.end() == LifeEnd.IN_SERVICE)
                .mapToDouble(each -> fitted.chanceDefective(life, 0, USE, each.track()))
                .sum();
        assertThat(expected).isCloseTo(defective, within(0.1 * defective));
    }

    @Test
    void moreFaultsNeverMakeADefectLessLikely() {
        DefectModel model = DefectDefaults.STANDARD.model(1, USE);
        SignTrack none = DrawnTrack.of(new byte[10]);
        SignTrack one = DrawnTrack.of(new byte[] {0, 0, 0, 0, 0, 0, 0, 0, 0, 1});
        SignTrack two = DrawnTrack.of(new byte[] {0, 0, 0, 0, 0, 0, 0, 0, 1, 1});
        double quiet = model.chanceDefective(life, 100_000, USE, none);
        double once = model.chanceDefective(life, 100_000, USE, one);
        double twice = model.chanceDefective(life, 100_000, USE, two);
        assertThat(quiet).isLessThan(once);
        assertThat(once).isLessThan(twice);
    }
}
