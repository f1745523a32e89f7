package dev.injectorplanner.core.option;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.EngineFamily;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Engines for these tests. */
final class Engines {
    private Engines() {}

    /** The V8 of the worked example: 0.5 h a cylinder, 50 l of coolant. */
    static EngineFamily v8() {
        return new EngineFamily(
                "V8",
                8,
                List.of(new Bank("left", List.of(1, 3, 5, 7)), new Bank("right", List.of(2, 4, 6, 8))),
                List.of(1, 5, 4, 2, 6, 3, 7, 8),
                0.5,
                50,
                50,
                "INJ",
                new BigDecimal("4000"));
    }

    static List<AccessStep> threeSteps() {
        return List.of(
                new AccessStep("V8", "covers", 1, 1, List.of(), 0, ""),
                new AccessStep("V8", "left pipes", 2, 2, List.of(1, 3, 5, 7), 0, ""),
                new AccessStep("V8", "rear mounts", 3, 3, List.of(7, 8), 60, ""));
    }

    static EngineFamily inline(int cylinders) {
        List<Integer> all = IntStream.rangeClosed(1, cylinders).boxed().toList();
        return new EngineFamily(
                "L", cylinders, List.of(new Bank("inline", all)), all, 0.4, 40, 50, "INJ", new BigDecimal("3000"));
    }

    static List<AccessStep> randomSteps(SplittableRandom random, int cylinders) {
        List<AccessStep> steps = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int i = 1; i <= count; i++) {
            List<Integer> served = IntStream.rangeClosed(1, cylinders)
                    .filter(cylinder -> random.nextInt(3) == 0)
                    .boxed()
                    .toList();
            steps.add(new AccessStep("L", "step " + i, i, random.nextInt(40) / 10.0, served, random.nextInt(100), ""));
        }
        return steps;
    }
}
