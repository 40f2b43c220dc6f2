/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.words.Phrases;
import org.ferrule.plansheet.page.Detail.Omission;

/** Says what was shortened so that a plan fits on one page. */
final class Shortened {
    private Shortened() {
    }

    /** One sentence; none where everything is told. */
    static Optional<String> of(Detail detail, SheetContent content) {
        Phrases phrases = content.words().phrases();
        List<String> parts = new ArrayList<>();
        for (Omission omission : Omission.values()) {
            boolean nothing = omission == Omission.WHY && content.reasons().isEmpty();
            if (!detail.tells(omission) && !nothing) {
                parts.add(phrases.get("omission." + omission));
            }
        }
        if (detail.lines() < Integer.MAX_VALUE) {
            parts.add(count(phrases, "omission.lines", detail.lines()));
        }
        if (detail.entries() < Integer.MAX_VALUE) {
            parts.add(count(phrases, "omission.entries", detail.entries()));
        }
        if (detail.whole() < content.plan().rungs().size()) {
            parts.add(phrases.fill("omission.brief", Integer.toString(detail.whole() + 1)));
        }
        if (detail.rungs() < content.plan().rungs().size()) {
            parts.add(phrases.fill("omission.rungs", Integer.toString(detail.rungs() + 1)));
        }
        return parts.isEmpty() ? Optional.empty()
                : Optional.of(phrases.fill("sheet.shortened", String.join("; ", parts)));
    }

    private static String count(Phrases phrases, String key, int count) {
        return count == 1 ? phrases.get(key + ".1") : phrases.fill(key, Integer.toString(count));
    }
}
