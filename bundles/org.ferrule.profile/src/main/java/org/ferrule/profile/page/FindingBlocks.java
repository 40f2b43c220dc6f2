/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.ferrule.chart.page.Block;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.profile.curve.Piece;
import org.ferrule.profile.words.FindingWords;
import org.ferrule.profile.words.ProfileWords;

/** What is said in words: first contacts, crossings, devices that are not drawn, sources. */
final class FindingBlocks {
    private final PageStyle style;
    private final double columnMm;
    private final Phrases phrases;
    private final List<Block> blocks = new ArrayList<>();

    private FindingBlocks(Phrases phrases, PageStyle style, double columnMm) {
        this.phrases = phrases;
        this.style = style;
        this.columnMm = columnMm;
    }

    static List<Block> of(ProfileComparison comparison, ProfileWords words, PageStyle style, double columnMm) {
        FindingBlocks made = new FindingBlocks(words.phrases(), style, columnMm);
        FindingWords findings = new FindingWords(comparison, words);
        if (!comparison.lines().isEmpty()) {
            made.heading("page.passages");
            for (int i = 0; i < comparison.lines().size(); i++) {
                made.paragraph(findings.line(i));
            }
            findings.passages().forEach(made::paragraph);
            made.paragraph(words.phrases().get("page.passages.note"));
        }
        made.heading("page.crossings");
        findings.crossings().forEach(made::paragraph);
        made.heading("page.sources");
        made.sources(sources(comparison));
        return made.blocks;
    }

    private void sources(Set<String> sources) {
        if (sources.isEmpty()) {
            paragraph(phrases.get("page.sources.none"));
        }
        sources.forEach(this::paragraph);
    }

    /** The sources of all figures that are drawn. */
    static Set<String> sources(ProfileComparison comparison) {
        Stream<SourceRef> ofDevices = comparison.devices().stream().map(ProfiledDevice::fromTip)
                .flatMap(curves -> curves.all().stream()).flatMap(curve -> curve.pieces().stream()).map(Piece::source);
        Stream<SourceRef> ofLines = comparison.lines().stream()
                .flatMap(line -> line.outer().bore(line.lumen()).stream()).map(Stretch::source);
        Set<String> sources = new TreeSet<>();
        Stream.concat(ofDevices, ofLines).filter(source -> !source.isNone())
                .forEach(source -> sources.add(source.toString()));
        return sources;
    }

    private void heading(String key) {
        add(phrases.get(key), style.heading(), 0.8);
    }

    private void paragraph(String text) {
        add(text, style.body(), 0.8);
    }

    private void add(String text, TextStyle lettering, double afterMm) {
        blocks.add(new Block("", TextLayout.standard().wrap(Printable.line(text), lettering, columnMm), lettering, 0,
                afterMm));
    }
}
