/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;
import java.util.Objects;

/**
 * How a chart stands to its sign-off, in words.
 *
 * @param head one sentence: who signed it off and when, and whether that still holds
 * @param upToDate whether it still holds
 * @param changes what has changed since, one line each
 */
public record SignedOff(String head, boolean upToDate, List<String> changes) {

    public SignedOff {
        Objects.requireNonNull(head, "head");
        changes = List.copyOf(changes);
    }
}
