/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.renal;

import static org.ferrule.thresholds.renal.RenalFigure.CLEARANCE;
import static org.ferrule.thresholds.renal.RenalFigure.CREATININE;
import static org.ferrule.thresholds.renal.RenalFigure.EGFR;
import static org.ferrule.thresholds.renal.RenalFigure.IODINE;
import static org.ferrule.thresholds.renal.RenalFigure.WEIGHT;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.ferrule.thresholds.Source;
import org.ferrule.thresholds.Threshold;

/** The published limits of contrast medium. They disagree by a factor of more than three. */
public final class ContrastLimits {
    /** 5 mL for each kg of body weight over the creatinine in mg/dL, at most 300 mL. */
    public static final ContrastLimit CIGARROA = new ContrastLimit("cigarroa", Threshold.beyond("5"), List.of(WEIGHT),
            List.of(CREATININE), Optional.of(BigDecimal.valueOf(300)),
            Source.seen("Cigarroa et al., Am J Med 1989;86:649-52"));

    private static final String REGISTRY = "Gurm et al., J Am Coll Cardiol 2011, doi 10.1016/j.jacc.2011.05.023";

    private static final List<ContrastLimit> PUBLISHED = List.of(CIGARROA,
            ContrastLimit.ratio("clearance-2", Threshold.beyond("2"), CLEARANCE, Source.seen(REGISTRY)),
            ContrastLimit.ratio("clearance-3", Threshold.beyond("3"), CLEARANCE, Source.seen(REGISTRY)),
            ContrastLimit.ratio("clearance-3.7", Threshold.beyond("3.7"), CLEARANCE,
                    Source.fromMemory("Laskey et al., J Am Coll Cardiol 2007;50:584")),
            ContrastLimit.ratio("clearance-4", Threshold.from("4"), CLEARANCE, Source.seen("PMID 23934631")),
            ContrastLimit.ratio("clearance-6.15", Threshold.from("6.15"), CLEARANCE,
                    Source.seen("Eur J Prev Cardiol 2016;23:931")),
            ContrastLimit.ratio("egfr-1.78", Threshold.from("1.78"), EGFR,
                    Source.seen("Nie et al., Front Med 2021;8:701062")),
            ContrastLimit.ratio("egfr-2.39", Threshold.from("2.39"), EGFR, Source.seen("PMID 21336957")),
            new ContrastLimit("iodine-1.1", Threshold.from("1.1"), List.of(EGFR), List.of(IODINE), Optional.empty(),
                    Source.seen("European guideline on contrast media, as quoted")));

    private ContrastLimits() {
    }

    /** Returns all of them, those of one figure beside each other. */
    public static List<ContrastLimit> published() {
        return PUBLISHED;
    }
}
