/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.LumenLine;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.page.ProfileContent;
import org.ferrule.profile.page.ProfilePages;
import org.ferrule.profile.plot.View;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.QuantitySyntaxException;

/** A comparison of devices of some libraries. */
public final class CompareRun {
    private final ProfileComparison comparison;
    private final List<Edition> libraries;
    private final Optional<String> wire;

    private CompareRun(ProfileComparison comparison, List<Edition> libraries, Optional<String> wire) {
        this.comparison = comparison;
        this.libraries = libraries;
        this.wire = wire;
    }

    /**
     * Compares.
     *
     * @param wire the diameter of a wire; {@code null} for none
     */
    public static CompareRun of(LibraryOptions documents, List<String> devices, String from, List<String> lumens,
            String wire) {
        Catalogue catalogue = documents.catalogue();
        RuleSet rules = documents.ruleSet();
        List<ReadDevice> read = devices.stream().map(id -> ReadDevice.of(catalogue.device(id).device(), rules))
                .toList();
        List<LumenLine> lines = lumens.stream().map(reference -> line(reference, catalogue, rules)).toList();
        try {
            ProfileComparison comparison = ProfileComparison.of(read, Landmark.parse(from), lines,
                    Optional.ofNullable(wire).map(text -> wire(text, rules)), rules);
            return new CompareRun(comparison, documents.editions(), Optional.ofNullable(wire));
        } catch (IllegalArgumentException e) {
            throw new CommandLineException(e.getMessage());
        }
    }

    private static LumenLine line(String reference, Catalogue catalogue, RuleSet rules) {
        LumenReference named = LumenReference.parse(reference);
        Device around = catalogue.device(named.device()).device();
        return new LumenLine(ReadDevice.of(around, rules), named.lumen(around, Direction.TIP_FIRST));
    }

    private static Figure wire(String text, RuleSet rules) {
        try {
            return new FigureReader(rules).read(Dimension.parse(text), FigureClass.WIRE_DIAMETER, DeviceKind.GUIDEWIRE)
                    .figure();
        } catch (QuantitySyntaxException e) {
            throw new CommandLineException("--wire \"" + text + "\": " + e.getMessage());
        }
    }

    public ProfileComparison comparison() {
        return comparison;
    }

    /**
     * Writes the pages in the format that the file's name asks for, and returns the files written.
     *
     * @param whole whether the plot shows the whole length
     */
    public List<Path> export(Path output, boolean whole, ProfileWords words) {
        Imprint imprint = new Imprint(words.phrases().get("page.title"), "", "", "", LocalDate.now());
        List<String> conditions = wire.map(text -> List.of(words.phrases().fill("page.wire", text))).orElse(List.of());
        Basis basis = new Basis(new Edition(comparison.rules().title(), comparison.rules().revision()), libraries,
                conditions);
        View view = whole ? View.whole(comparison) : View.distal(comparison);
        return PageFiles.write(ProfilePages.of(new ProfileContent(imprint, basis, comparison, view, words,
                new PaperFormat(PaperFormat.Size.A4, true)), OffsetDateTime.now()), output);
    }
}
