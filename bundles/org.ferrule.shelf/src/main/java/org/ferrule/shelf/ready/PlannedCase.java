/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.time.LocalDate;
import java.util.List;

/**
 * A case that is planned for a day.
 *
 * @param id what the case is called; no patient's name
 * @param date the day
 * @param needs needs in the order in which they may come up
 */
public record PlannedCase(String id, LocalDate date, List<Need> needs) {

    /** Copies the list. */
    public PlannedCase {
        needs = List.copyOf(needs);
    }
}
