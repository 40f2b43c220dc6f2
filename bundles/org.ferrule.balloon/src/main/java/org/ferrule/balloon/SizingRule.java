/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A band of the ratio of a device's diameter to the vessel's, with its source. The sources disagree, so they are shown
 * side by side and none of them is the answer.
 */
public enum SizingRule {
    /** Target of burr sizes. */
    BURR_TARGET(SizedDevice.BURR, "0.4", "0.6", "common practice", "common practice"),
    /** Upper limit of a European expert consensus. */
    BURR_CONSENSUS(SizedDevice.BURR, null, "0.6", "Barbato et al., EuroIntervention 2015;11:30-36", "from memory"),
    /** Upper limit between the two arms of randomised trials, above which nothing was gained. */
    BURR_TRIALS(SizedDevice.BURR, null, "0.7", "STRATAS 2001; CARAT 2001", "from memory"),
    /** Preparing a lesion with a balloon of the vessel's size. */
    BALLOON_PREPARATION(SizedDevice.BALLOON, null, "1.0", "common practice", "common practice"),
    /** Stent balloons up to the vessel's size: none of the series reached full expansion. */
    BALLOON_NEVER_FULL(SizedDevice.BALLOON, null, "1.0", "Fujise et al., series of 31", "seen"),
    /** Stent balloons well above the vessel's size: all of the series reached full expansion. */
    BALLOON_ALWAYS_FULL(SizedDevice.BALLOON, "1.2", null, "Fujise et al., series of 31", "seen");

    private final SizedDevice device;
    private final BigDecimal low;
    private final BigDecimal high;
    private final String source;
    private final String mark;

    SizingRule(SizedDevice device, String low, String high, String source, String mark) {
        this.device = device;
        this.low = low == null ? null : new BigDecimal(low);
        this.high = high == null ? null : new BigDecimal(high);
        this.source = source;
        this.mark = mark;
    }

    /** What a rule is about. */
    public enum SizedDevice {
        /** An inflated balloon. */
        BALLOON,
        /** An atherectomy burr. */
        BURR
    }

    /** Returns the rules for a kind of device. */
    public static List<SizingRule> of(SizedDevice device) {
        return Arrays.stream(values()).filter(rule -> rule.device == device).toList();
    }

    /** Returns what the rule is about. */
    public SizedDevice device() {
        return device;
    }

    /** Returns the lower end of the band, which belongs to it. */
    public Optional<BigDecimal> low() {
        return Optional.ofNullable(low);
    }

    /** Returns the upper end of the band, which belongs to it. */
    public Optional<BigDecimal> high() {
        return Optional.ofNullable(high);
    }

    /** Returns where the rule comes from. */
    public String source() {
        return source;
    }

    /** Returns how the source is known: {@code seen}, {@code from memory} or {@code common practice}. */
    public String mark() {
        return mark;
    }
}
