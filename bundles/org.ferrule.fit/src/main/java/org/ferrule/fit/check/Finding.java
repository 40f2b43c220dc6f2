/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * What one check found.
 *
 * @param verdict of this check alone
 * @param clearance at the limiting place, when it is about clearance
 * @param limiting the place that decides, when there is one
 * @param reach how far the device comes, when this check knows
 * @param reasons decisive ones first
 * @param evidence what there is to show
 */
public record Finding(Verdict verdict, Optional<Clearance> clearance, Optional<Limiting> limiting,
        Optional<Length> reach, List<Reason> reasons, List<Evidence> evidence) {

    /** What a check finds that has nothing to say. */
    public static final Finding SILENT = of(Verdict.FITS, List.of());

    public Finding {
        Objects.requireNonNull(verdict, "verdict");
        reasons = List.copyOf(reasons);
        evidence = List.copyOf(evidence);
    }

    /** A finding with nothing to show beside its reasons. */
    public Finding(Verdict verdict, Optional<Clearance> clearance, Optional<Limiting> limiting,
            Optional<Length> reach, List<Reason> reasons) {
        this(verdict, clearance, limiting, reach, reasons, List.of());
    }

    /** A finding without a place that has something to show. */
    static Finding shown(Verdict verdict, List<Reason> reasons, Evidence... evidence) {
        return new Finding(verdict, Optional.empty(), Optional.empty(), Optional.empty(), reasons, List.of(evidence));
    }

    /** A finding without a place. */
    public static Finding of(Verdict verdict, List<Reason> reasons) {
        return new Finding(verdict, Optional.empty(), Optional.empty(), Optional.empty(), reasons);
    }
}
