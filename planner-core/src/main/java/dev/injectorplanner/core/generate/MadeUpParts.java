package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Per;
import java.math.BigDecimal;
import java.util.List;

/** Invented parts of the invented engines, what a job takes of them, and how the injectors truly wear. */
final class MadeUpParts {
    static final String INJECTOR_V8 = "KV-8140";
    static final String INJECTOR_SIX = "KL-6110";
    static final String INJECTOR_FOUR = "KT-4050";

    private static final String FIRST_SUPPLIER = "Calder Diesel Supply";
    private static final String OTHER_SUPPLIER = "Mossgate Components";

    private MadeUpParts() {}

    static List<Part> parts() {
        return List.of(
                injector(INJECTOR_V8, "injector, V8", "612.00", "180.00", 12, 24, 12, 200_000, 16),
                injector(INJECTOR_SIX, "injector, inline six", "485.00", "140.00", 9, 18, 6, 100_000, 16),
                injector(INJECTOR_FOUR, "injector, inline four", "268.00", "60.00", 6, 14, 0, 0, 10),
                plain("KX-1001", "injector seal kit", PartKind.SEAL, "14.50", 4, 8, 10),
                plain("KX-1002", "clamp bolt, single use", PartKind.FITTING, "3.20", 4, 8, 20),
                plain("KX-1010", "high-pressure pipe", PartKind.LINE, "46.00", 8, 15, 1),
                plain("KX-1011", "return hose clip", PartKind.FITTING, "0.85", 3, 7, 50),
                plain("KX-1020", "rocker cover gasket", PartKind.SEAL, "31.00", 5, 10, 1),
                plain("KX-1021", "intake gasket set", PartKind.SEAL, "58.00", 6, 12, 1),
                plain("KX-1022", "exhaust gas cooler gasket", PartKind.SEAL, "27.50", 10, 20, 1),
                plain("KX-1030", "fuel filter", PartKind.FILTER, "22.00", 3, 6, 6),
                plain("KX-1040", "bore cleaner, can", PartKind.CLEANER, "9.40", 3, 6, 12),
                plain("KX-1050", "coolant concentrate, 20 l can", PartKind.COOLANT, "68.00", 2, 5, 1));
    }

    private static Part injector(
            String part,
            String description,
            String price,
            String deposit,
            int leadDays,
            int leadDaysMax,
            int warrantyMonths,
            double warrantyKm,
            int codeLength) {
        return new Part(
                part,
                description,
                PartKind.INJECTOR,
                FIRST_SUPPLIER,
                new BigDecimal(price),
                new BigDecimal(deposit),
                45,
                leadDays,
                leadDaysMax,
                1,
                0,
                warrantyMonths,
                warrantyKm,
                CodeForm.pattern(codeLength));
    }

    private static Part plain(
            String part, String description, PartKind kind, String price, int leadDays, int leadDaysMax, int pack) {
        return new Part(
                part,
                description,
                kind,
                OTHER_SUPPLIER,
                new BigDecimal(price),
                BigDecimal.ZERO,
                0,
                leadDays,
                leadDaysMax,
                pack,
                0,
                0,
                0,
                null);
    }

    static List<JobPart> jobParts() {
        return List.of(
                new JobPart(MadeUpEngines.V8, Per.CYLINDER, null, "KX-1001", 1, 1),
                new JobPart(MadeUpEngines.V8, Per.CYLINDER, null, "KX-1002", 2, 1),
                new JobPart(MadeUpEngines.V8, Per.CYLINDER, null, "KX-1010", 1, 0.25),
                new JobPart(MadeUpEngines.V8, Per.CYLINDER, null, "KX-1011", 2, 0.3),
                new JobPart(MadeUpEngines.V8, Per.BANK, null, "KX-1020", 1, 1),
                new JobPart(MadeUpEngines.V8, Per.STEP, "charge pipes and intake off", "KX-1021", 1, 1),
                new JobPart(MadeUpEngines.V8, Per.STEP, "exhaust gas cooler off", "KX-1022", 1, 1),
                new JobPart(MadeUpEngines.V8, Per.VISIT, null, "KX-1030", 2, 1),
                new JobPart(MadeUpEngines.V8, Per.VISIT, null, "KX-1040", 1, 1),
                new JobPart(MadeUpEngines.SIX, Per.CYLINDER, null, "KX-1001", 1, 1),
                new JobPart(MadeUpEngines.SIX, Per.CYLINDER, null, "KX-1002", 2, 1),
                new JobPart(MadeUpEngines.SIX, Per.CYLINDER, null, "KX-1010", 1, 0.2),
                new JobPart(MadeUpEngines.SIX, Per.BANK, null, "KX-1020", 1, 1),
                new JobPart(MadeUpEngines.SIX, Per.VISIT, null, "KX-1030", 1, 1),
                new JobPart(MadeUpEngines.SIX, Per.VISIT, null, "KX-1040", 1, 1),
                new JobPart(MadeUpEngines.FOUR, Per.CYLINDER, null, "KX-1001", 1, 1),
                new JobPart(MadeUpEngines.FOUR, Per.CYLINDER, null, "KX-1002", 1, 1),
                new JobPart(MadeUpEngines.FOUR, Per.CYLINDER, null, "KX-1011", 1, 0.4),
                new JobPart(MadeUpEngines.FOUR, Per.VISIT, null, "KX-1030", 1, 1));
    }

    static List<TrueLife> lives() {
        return List.of(
                new TrueLife(INJECTOR_V8, Origin.NEW, 2.8, 420_000),
                new TrueLife(INJECTOR_V8, Origin.REMAN, 2.1, 340_000),
                new TrueLife(INJECTOR_SIX, Origin.NEW, 3.0, 450_000),
                new TrueLife(INJECTOR_SIX, Origin.REMAN, 2.2, 360_000),
                new TrueLife(INJECTOR_FOUR, Origin.NEW, 2.4, 290_000),
                new TrueLife(INJECTOR_FOUR, Origin.REMAN, 1.9, 240_000));
    }
}
