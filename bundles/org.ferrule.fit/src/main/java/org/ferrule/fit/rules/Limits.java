/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Length;

/**
 * Thresholds and allowances beyond clearances, each with its source. Sources disagree, so there may be several for one
 * thing; each is told by its own source. A check that needs one that is not here says so, and decides nothing by a
 * number of its own.
 *
 * @param flow shares of flow below which a caution is due
 * @param allowances lengths to allow for
 * @param ratios bands of ratios to a vessel
 * @param chances chances of overlap above which a caution is due
 */
public record Limits(List<FlowLimit> flow, List<Allowance> allowances, List<RatioBand> ratios,
        List<ChanceLimit> chances) {

    /** A rule set that says nothing of all this. */
    public static final Limits NONE = new Limits(List.of(), List.of(), List.of(), List.of());

    public Limits {
        flow = List.copyOf(flow);
        allowances = List.copyOf(allowances);
        ratios = List.copyOf(ratios);
        chances = List.copyOf(chances);
    }

    /** The allowance for that purpose; the last one that the rule set gives. */
    public Optional<Allowance> allowance(Purpose purpose) {
        return allowances.stream().filter(a -> a.purpose() == purpose).reduce((a, b) -> b);
    }

    /** What flow is needed for. */
    public enum FlowUse {
        CONTRAST("contrast"), PRESSURE("pressure");

        private final String word;

        FlowUse(String word) {
            this.word = word;
        }

        /** The word for it, as documents write it. */
        public String word() {
            return word;
        }
    }

    /**
     * A share of flow below which a caution is due.
     *
     * @param use what suffers
     * @param least share of the empty lumen's flow, between 0 and 1
     * @param source who says so
     */
    public record FlowLimit(FlowUse use, BigDecimal least, SourceRef source) {
        public FlowLimit {
            Objects.requireNonNull(use, "use");
            Objects.requireNonNull(source, "source");
            requireShare("least share of flow", least);
        }
    }

    /** What a length is allowed for. */
    public enum Purpose {
        HUB_AND_VALVE("hub and valve"), EXTENSION_OVERLAP("extension overlap"), GRIP("grip");

        private final String word;

        Purpose(String word) {
            this.word = word;
        }

        /** The word for it, as documents write it. */
        public String word() {
            return word;
        }
    }

    /**
     * A length to allow for.
     *
     * @param purpose what for
     * @param length 0 or more
     * @param source who says so
     */
    public record Allowance(Purpose purpose, Length length, SourceRef source) {
        public Allowance {
            Objects.requireNonNull(purpose, "purpose");
            Objects.requireNonNull(source, "source");
            if (length.isNegative()) {
                throw new IllegalArgumentException(
                        "the allowance for " + purpose.word() + " is negative: " + length.mm() + " mm");
            }
        }
    }

    /** What is compared with the vessel. */
    public enum RatioUse {
        BALLOON_TO_VESSEL("balloon to vessel"), BURR_TO_VESSEL("burr to vessel");

        private final String word;

        RatioUse(String word) {
            this.word = word;
        }

        /** The word for it, as documents write it. */
        public String word() {
            return word;
        }
    }

    /**
     * A band of ratios to the vessel's diameter.
     *
     * @param use what is compared
     * @param low lower end; absent when open
     * @param high upper end; absent when open
     * @param meaning what it says of a ratio inside, in words
     * @param source who says so
     */
    public record RatioBand(RatioUse use, Optional<BigDecimal> low, Optional<BigDecimal> high, String meaning,
            SourceRef source) {
        public RatioBand {
            Objects.requireNonNull(use, "use");
            Objects.requireNonNull(meaning, "meaning");
            Objects.requireNonNull(source, "source");
            if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0) {
                throw new IllegalArgumentException(
                        "a band of ratios is out of order: " + low.get() + " to " + high.get());
            }
        }
    }

    /**
     * A chance of overlap above which a caution is due.
     *
     * @param greatest between 0 and 1
     * @param source who says so
     */
    public record ChanceLimit(BigDecimal greatest, SourceRef source) {
        public ChanceLimit {
            Objects.requireNonNull(source, "source");
            requireShare("greatest chance", greatest);
        }
    }

    private static void requireShare(String name, BigDecimal value) {
        if (value.signum() < 0 || value.compareTo(BigDecimal.ONE) > 0) {
            throw new IllegalArgumentException("the " + name + " must lie between 0 and 1, not " + value);
        }
    }
}
