/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.util.List;

/**
 * How a chart stands to its sign-off. Immutable.
 *
 * @param by who signed it off
 * @param date when
 * @param verdictCount how many verdicts have changed
 * @param verdicts those that have changed, the first {@link #MOST} of them
 * @param added devices that were not in the chart then, by name
 * @param gone devices that are not in the chart any more, as the sign-off names them
 * @param documents documents that are not what they were, by path
 * @param asked what is asked otherwise than then: the statements of then that hold no more, and those that are new
 */
public record SignOffState(String by, String date, int verdictCount, List<VerdictChange> verdicts,
        List<String> added, List<String> gone, List<String> documents, List<String> asked) {

    /** How many verdicts are listed at most. */
    public static final int MOST = 100_000;

    public SignOffState {
        verdicts = List.copyOf(verdicts);
        added = List.copyOf(added);
        gone = List.copyOf(gone);
        documents = List.copyOf(documents);
        asked = List.copyOf(asked);
    }

    /** Whether everything is as it was signed off. */
    public boolean upToDate() {
        return verdictsStand() && documents.isEmpty() && asked.isEmpty();
    }

    /** Whether every verdict is as it was signed off, and no device is new or gone. */
    public boolean verdictsStand() {
        return verdictCount == 0 && added.isEmpty() && gone.isEmpty();
    }
}
