/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import java.math.BigDecimal;

import org.ferrule.quantity.Length;

/**
 * The ratio of a device's diameter to the reference diameter of the vessel: of a balloon (balloon-to-artery ratio) or a
 * burr (burr-to-artery ratio). Compared with a rule exactly.
 *
 * @param device the diameter of the balloon or burr, zero or more
 * @param vessel the reference diameter of the vessel, above zero
 */
public record SizingRatio(Length device, Length vessel) {

    /** Where a ratio stands beside the band of a rule. */
    public enum Standing {
        /** Below the band. */
        BELOW,
        /** In the band, ends included. */
        WITHIN,
        /** Above the band. */
        ABOVE
    }

    /**
     * Checks the diameters.
     *
     * @throws IllegalArgumentException naming them if they are out of range
     */
    public SizingRatio {
        if (device.isNegative() || vessel.compareTo(Length.ZERO) <= 0) {
            throw new IllegalArgumentException("no ratio of " + device + " to " + vessel);
        }
    }

    /** Returns the ratio, rounded as doubles are. */
    public double value() {
        return (double) device.thirdNanometres() / vessel.thirdNanometres();
    }

    /** Tells where the ratio stands beside the band of a rule. */
    public Standing beside(SizingRule rule) {
        if (rule.low().isPresent() && compareTo(rule.low().get()) < 0) {
            return Standing.BELOW;
        }
        return rule.high().isPresent() && compareTo(rule.high().get()) > 0 ? Standing.ABOVE : Standing.WITHIN;
    }

    private int compareTo(BigDecimal ratio) {
        return BigDecimal.valueOf(device.thirdNanometres())
                .compareTo(ratio.multiply(BigDecimal.valueOf(vessel.thirdNanometres())));
    }
}
