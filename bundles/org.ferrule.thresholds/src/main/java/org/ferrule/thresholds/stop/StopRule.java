/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.stop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.thresholds.Source;
import org.ferrule.thresholds.Threshold;

/**
 * How much of something is enough. Limits of contrast and dose stand with their own.
 *
 * @param id its word, by which settings and texts name it
 * @param effort what is counted
 * @param threshold how much is enough
 * @param source where it comes from
 */
public record StopRule(String id, Effort effort, Threshold threshold, Source source) {
    private static final Source CONSENSUS = Source.fromMemory("Barbato et al., EuroIntervention 2015;11:30-36");
    private static final List<StopRule> USUAL = List.of(
            new StopRule("failed-passes", Effort.FAILED_PASSES, Threshold.from("3"), Source.commonPractice()),
            new StopRule("minutes-early", Effort.MINUTES, Threshold.from("10"), Source.commonPractice()),
            new StopRule("minutes-late", Effort.MINUTES, Threshold.from("15"), Source.commonPractice()),
            new StopRule("burr-run", Effort.BURR_RUN_SECONDS, Threshold.beyond("30"), CONSENSUS),
            new StopRule("burr-slowing", Effort.BURR_SLOWING_RPM, Threshold.beyond("5000"), CONSENSUS));

    /** Returns the rules that are usual. */
    public static List<StopRule> usual() {
        return USUAL;
    }

    /** Tells whether what has been spent is enough; where it is not known, it is not told. */
    public Optional<Boolean> isReachedBy(Map<Effort, BigDecimal> spent) {
        return Optional.ofNullable(spent.get(effort)).map(threshold::isReachedBy);
    }
}
