/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.util.List;

/**
 * No purchase covers all that was asked for.
 *
 * @param gaps what cannot be covered, at least one
 */
public record Uncoverable(List<Gap> gaps) implements PurchaseAnswer {

    /** Copies the list. */
    public Uncoverable {
        gaps = List.copyOf(gaps);
    }

    /**
     * An axis of a case that lacks rungs.
     *
     * @param plannedCase id of the case
     * @param axis the axis
     * @param wanted number of rungs that were asked for
     * @param possible number of rungs that can be covered
     * @param alone whether that is so even if no other axis and no other case uses anything; else it is the units that
     *        others need, and another axis or case could be the one that lacks them
     * @param needs needs, as {@code rung/need}, that neither the shelf nor all offers can cover on the day of the case
     */
    public record Gap(String plannedCase, String axis, int wanted, int possible, boolean alone, List<String> needs) {

        /** Copies the list. */
        public Gap {
            needs = List.copyOf(needs);
        }
    }
}
