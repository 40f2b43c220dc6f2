/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/** What stands at the end of a chart: how many verdicts, how to read them, on what they rest, and which sources. */
final class AboutText {
    private static final int MOST_CHANGES = 40;

    private final Sheet sheet;
    private final Phrases phrases;
    private final PageStyle style;
    private final double columnMm;
    private final List<Block> blocks = new ArrayList<>();

    private AboutText(Sheet sheet, double columnMm) {
        this.sheet = sheet;
        this.phrases = sheet.phrases();
        this.style = sheet.style();
        this.columnMm = columnMm;
    }

    static List<Block> of(Sheet sheet, double columnMm) {
        AboutText text = new AboutText(sheet, columnMm);
        text.addVerdicts();
        text.addChanges();
        text.addReading();
        text.addBasis();
        text.addSources();
        return text.blocks;
    }

    private void addVerdicts() {
        heading("page.about.verdicts");
        paragraph(phrases.fill("page.about.in", Counts.in(sheet.content()).inWords()));
        paragraph(phrases.fill("page.about.out", Counts.out(sheet.content()).inWords()));
    }

    /** A chart that is not up to date says where; what is too much for paper stands in the program. */
    private void addChanges() {
        sheet.content().imprint().signedOff().filter(signed -> !signed.upToDate()).ifPresent(signed -> {
            heading("page.about.changes");
            signed.changes().stream().limit(MOST_CHANGES).forEach(this::paragraph);
            int more = signed.changes().size() - MOST_CHANGES;
            if (more > 0) {
                paragraph(phrases.fill("page.about.changes.more", Integer.toString(more)));
            }
        });
    }

    private void addReading() {
        heading("page.about.reading");
        for (String key : List.of("fits", "claim", "tight", "unknown", "blocked", "order")) {
            paragraph(phrases.get("page.about.reading." + key));
        }
    }

    private void addBasis() {
        heading("page.about.basis");
        paragraph(phrases.fill("page.rules", Header.edition(phrases, sheet.content().basis().rules())));
        sheet.content().basis().libraries()
                .forEach(library -> paragraph(phrases.fill("page.libraries", Header.edition(phrases, library))));
        sheet.content().basis().conditions()
                .forEach(condition -> paragraph(phrases.fill("page.conditions", condition)));
        if (!sheet.content().footnotes().isEmpty()) {
            heading("page.about.footnotes");
            sheet.content().footnotes().forEach(this::paragraph);
        }
    }

    private void addSources() {
        heading("page.about.sources");
        Set<String> sources = new TreeSet<>();
        sheet.sources().forEach(source -> sources.add(source.toString()));
        if (sources.isEmpty()) {
            paragraph(phrases.get("page.about.none"));
        }
        sources.forEach(this::paragraph);
    }

    private void heading(String key) {
        add(phrases.get(key), style.heading(), 1);
    }

    private void paragraph(String text) {
        add(text, style.body(), 1.2);
    }

    private void add(String text, TextStyle lettering, double after) {
        blocks.add(new Block("", TextLayout.standard().wrap(Printable.line(text), lettering, columnMm), lettering, 0,
                after));
    }
}
