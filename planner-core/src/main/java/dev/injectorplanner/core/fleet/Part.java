package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Something bought.
 *
 * @param part its number
 * @param description what it is
 * @param kind its kind
 * @param supplier who sells it
 * @param price price of one
 * @param coreDeposit deposit paid with it until the old unit is sent back, 0 for none
 * @param coreDays days to send the old unit back, 0 where there is no deposit
 * @param leadDays usual days from order to receipt
 * @param leadDaysMax days that are hardly ever exceeded, at least {@code leadDays}
 * @param pack how many are sold together, at least 1
 * @param minimumOrder least quantity of an order, at least 0
 * @param warrantyMonths months from fitting, 0 for none
 * @param warrantyKm km from fitting, 0 for none
 * @param codePattern regular expression that its calibration codes match (see {@link CodePattern}), or null where it
 *     has none
 */
public record Part(
        String part,
        String description,
        PartKind kind,
        String supplier,
        BigDecimal price,
        BigDecimal coreDeposit,
        int coreDays,
        int leadDays,
        int leadDaysMax,
        int pack,
        int minimumOrder,
        int warrantyMonths,
        double warrantyKm,
        @Nullable String codePattern) {
    public Part {
        part = Require.name("part", part);
        description = Require.text("description", description);
        supplier = Require.name("supplier", supplier);
        price = Require.money("price", price);
        coreDeposit = Require.money("core_deposit", coreDeposit);
        Require.within("core_days", coreDays, 0, 3_650);
        Require.within("lead_days", leadDays, 0, 1_000);
        Require.within("lead_days_max", leadDaysMax, 0, 1_000);
        if (leadDaysMax < leadDays) {
            throw new InvalidValueException(
                    "lead_days_max", leadDaysMax, "is below lead_days " + leadDays, "enter the longest lead time");
        }
        Require.within("pack", pack, 1, 100_000);
        Require.within("minimum_order", minimumOrder, 0, 1_000_000);
        Require.within("warranty_months", warrantyMonths, 0, 600);
        Require.within("warranty", warrantyKm, 0, Reading.MOST_KM);
        codePattern = codePattern == null || codePattern.isBlank() ? null : CodePattern.checked(codePattern);
    }

    /** Whether a calibration code fits this part; any code does where there is no pattern. */
    public boolean acceptsCode(String code) {
        return codePattern == null || CodePattern.matches(codePattern, code);
    }
}
