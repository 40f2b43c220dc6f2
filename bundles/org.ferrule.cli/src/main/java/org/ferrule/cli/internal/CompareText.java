/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.table.Differences;
import org.ferrule.profile.words.FindingWords;
import org.ferrule.profile.words.ProfileWords;

/** A comparison as lines of text: devices, differences, first contacts, crossings. */
public final class CompareText {
    private static final String INDENT = "  ";

    private final ProfileComparison comparison;
    private final ProfileWords words;
    private final FindingWords findings;

    /** A comparison in those words. */
    public CompareText(ProfileComparison comparison, ProfileWords words) {
        this.comparison = comparison;
        this.words = words;
        this.findings = new FindingWords(comparison, words);
    }

    /** All lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < comparison.devices().size(); i++) {
            lines.add(findings.device(i) + " (" + comparison.devices().get(i).id() + ")");
            findings.notPlaced(i).ifPresent(lines::add);
        }
        lines.add("");
        table().forEach(lines::add);
        if (!comparison.lines().isEmpty()) {
            lines.add("");
            lines.add(words.phrases().get("page.passages"));
            IntStream.range(0, comparison.lines().size()).mapToObj(findings::line).forEach(l -> lines.add(INDENT + l));
            findings.passages().forEach(passage -> lines.add(INDENT + passage));
            lines.add(INDENT + words.phrases().get("page.passages.note"));
        }
        lines.add("");
        lines.add(words.phrases().get("page.crossings"));
        findings.crossings().forEach(crossing -> lines.add(INDENT + crossing));
        lines.add("");
        lines.add("Rule set: " + comparison.rules().title() + ", rev. " + comparison.rules().revision() + ". "
                + words.phrases().get("page.caution"));
        return lines;
    }

    private List<String> table() {
        List<List<String>> cells = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of(words.phrases().get("value.quantity")));
        IntStream.range(0, comparison.devices().size()).mapToObj(ProfileWords::letter).forEach(head::add);
        head.add(words.phrases().get("value.spread"));
        cells.add(head);
        comparison.differences().rows().forEach(row -> cells.add(cells(row)));
        return TextTable.aligned(cells);
    }

    private List<String> cells(Differences.Row row) {
        List<String> cells = new ArrayList<>(List.of(words.quantity(row.quantity())));
        row.values().stream().map(words::value).forEach(cells::add);
        cells.add(words.spread(row));
        return cells;
    }
}
