/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.page.SignedOff;
import org.ferrule.chart.words.Phrases;
import org.ferrule.fit.device.Phase;

/** Says in words how a chart stands to its sign-off. */
public final class SignOffWords {
    private final Phrases phrases = Phrases.beside(SignOffWords.class, "signoff");

    /** All that is to be said, for paper. */
    public SignedOff inWords(SignOffState state) {
        return new SignedOff(head(state), state.upToDate(), changes(state));
    }

    /** One sentence for the head of the chart: who signed it off, and whether that still holds. */
    public String head(SignOffState state) {
        if (state.upToDate()) {
            return phrases.fill("current", state.by(), state.date());
        }
        String since = String.join(", ", counts(state));
        return phrases.fill(state.verdictsStand() ? "basis" : "outdated", state.by(), state.date(), since);
    }

    private List<String> counts(SignOffState state) {
        List<String> counts = new ArrayList<>();
        add(counts, "verdicts", state.verdictCount());
        add(counts, "added", state.added().size());
        add(counts, "gone", state.gone().size());
        add(counts, "documents", state.documents().size());
        add(counts, "asked", state.asked().size());
        return counts;
    }

    private void add(List<String> counts, String key, int count) {
        if (count > 0) {
            counts.add(phrases.fill("count." + key + (count == 1 ? ".one" : ""), Integer.toString(count)));
        }
    }

    /** What has changed, one line each. */
    public List<String> changes(SignOffState state) {
        List<String> lines = new ArrayList<>();
        state.verdicts().forEach(change -> lines.add(line(change)));
        if (state.verdictCount() > state.verdicts().size()) {
            lines.add(phrases.fill("more", Integer.toString(state.verdictCount() - state.verdicts().size())));
        }
        state.added().forEach(name -> lines.add(phrases.fill("added", name)));
        state.gone().forEach(key -> lines.add(phrases.fill("gone", key)));
        state.documents().forEach(path -> lines.add(phrases.fill("document", path)));
        state.asked().forEach(statement -> lines.add(phrases.fill("asked", statement)));
        return lines;
    }

    private String line(VerdictChange change) {
        return phrases.fill(change.phase() == Phase.IN ? "verdict.in" : "verdict.out", change.inner(), change.outer(),
                change.before().word(), change.after().word());
    }
}
