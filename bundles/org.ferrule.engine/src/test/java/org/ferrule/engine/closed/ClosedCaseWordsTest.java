/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.engine.closed.RecordTable.Row;
import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.CaseEnd;
import org.junit.jupiter.api.Test;

class ClosedCaseWordsTest {
    private static final String HASH = "0123456789abcdef".repeat(4);

    private static ClosedCase closed() {
        return new ClosedCases().budget("10", "12").planned("small", "Small balloon", "balloon-150")
                .planned("burr", "Burr").opened("balloon-150", "balloon-150", "L1")
                .logged("small", AttemptOutcome.FAILED, 3, "balloon-150:L1").read();
    }

    private static ClosedCaseWords words() {
        return new ClosedCaseWords(closed().beside(List.of(
                new Fingerprint("a.devices.json", "2", HASH, Standing.UNCHANGED),
                new Fingerprint("b.rules.json", "", HASH, Standing.CHANGED))));
    }

    @Test
    void thePlanSaysStateEquipmentAndLot() {
        List<Row> rows = words().plan().rows();
        assertEquals(List.of("1", "Small balloon", "failed", "balloon-150: lot L1"), rows.get(0).cells());
        assertEquals(List.of("2", "Burr", "not tried", ""), rows.get(1).cells());
    }

    @Test
    void anExceededBudgetSaysByHowMuchAndIsSeen() {
        Row time = words().totals().rows().get(0);
        assertEquals(List.of("Minutes", "10", "3", "13", "12", "exceeded by 1"), time.cells());
        assertTrue(time.notable());
        assertFalse(words().totals().rows().get(1).notable());
    }

    @Test
    void aDocumentThatHasChangedIsSeenAndItsFingerprintIsToldInFullOrInShort() {
        RecordTable documents = words().documents();
        assertEquals(List.of("b.rules.json", "not noted", "changed since", HASH), documents.rows().get(1).cells());
        assertTrue(documents.rows().get(1).notable());
        assertFalse(documents.rows().get(0).notable());
        assertEquals("0123456789ab\u2026", words().documentsInShort().rows().get(0).cells().get(3));
        assertTrue(words().documentsInBrief().startsWith("1 of its documents is not"), words()::documentsInBrief);
    }

    @Test
    void everyRowHasACellForEachHeading() {
        words().tables().forEach(table -> table.rows().forEach(
                row -> assertEquals(table.headings().size(), row.cells().size(), table::title)));
    }

    @Test
    void theHeadSaysWhenAndHow() {
        assertEquals("Closed on 2026-04-02: stopped; by the log the device is not across.", words().head());
        assertEquals("Closed on 2026-04-02: the device is across.",
                ClosedCaseWords.head("2026-04-02", CaseEnd.CROSSED));
    }

    @Test
    void asTextItsColumnsStandBelowEachOther() {
        List<String> lines = ClosedCaseText.lines(closed());
        int head = lines.indexOf("The plan as it stood") + 2;
        assertEquals(lines.get(head).indexOf("What came of it"), lines.get(head + 1).indexOf("failed"));
        assertEquals(lines.get(head).indexOf("What came of it"), lines.get(head + 2).indexOf("not tried"));
        assertTrue(lines.contains("   No document was noted on which it rests."), lines::toString);
    }
}
