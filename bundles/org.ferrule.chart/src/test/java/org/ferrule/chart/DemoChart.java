/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.CellAnswers;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Head;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.chart.page.ShownNumber;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.quantity.LengthUnit;

/** A chart over an invented shelf, for tests of pages and files. */
public final class DemoChart {
    private static final List<String> GUIDES = List.of("5 Fr", "0.058 in", "6 Fr", "0.070 in min", "7 Fr", "0.081 in",
            "8 Fr", "");

    private DemoChart() {
    }

    /** The outer devices. */
    public static List<Device> outer() {
        List<Device> outer = new ArrayList<>();
        for (int i = 0; i < GUIDES.size(); i += 2) {
            outer.add(Shelf.guide(GUIDES.get(i), GUIDES.get(i + 1)));
        }
        outer.add(Shelf.extension());
        return outer;
    }

    /** As many balloons as wished, and one of each other kind. */
    public static List<Device> inner(int balloons) {
        List<Device> inner = new ArrayList<>();
        for (int i = 0; i < balloons; i++) {
            inner.add(Shelf.balloon(String.format(Locale.ROOT, "%.2f x %d", 1.5 + 0.25 * i, 8 + 4 * (i % 5)),
                    String.format(Locale.ROOT, "%.2f mm", 0.66 + 0.035 * i)));
        }
        inner.addAll(List.of(Shelf.claimedStent("0.066 in"), Shelf.microcatheter(), Shelf.dualLumen(), Shelf.burr(),
                Shelf.unlabelled()));
        return inner;
    }

    /** A chart on A4 landscape. */
    public static ChartContent content(List<Device> outer, List<Device> inner) {
        return content(outer, inner, new PaperFormat(PaperFormat.Size.A4, true));
    }

    /** A chart on paper of any size. */
    public static ChartContent content(List<Device> outer, List<Device> inner, PaperFormat paper) {
        return new ChartContent(
                new Imprint("Through the guides of room 2",
                        "Nurses and physicians of the invented laboratory at Hollin", "A. Nyberg", "4",
                        LocalDate.of(2026, 5, 11)),
                new Basis(new Edition("Test rules", "1"), List.of(new Edition("Guides and extensions", "3"),
                        new Edition("Balloons, stents and the rest", "7")), List.of("tip first", "hub to hub")),
                outer.stream().map(DemoChart::outerHead).toList(), inner.stream().map(DemoChart::innerHead).toList(),
                answers(outer, inner), List.of("Invented data: no such maker, device or laboratory exists."),
                UnitPreferences.in(LengthUnit.MILLIMETRE), ShownNumber.WORST, paper);
    }

    private static CellAnswers answers(List<Device> outer, List<Device> inner) {
        List<List<FitAnswer>> all = outer.stream().map(o -> inner.stream()
                .map(i -> Shelf.answer(Shelf.question(o, i))).toList()).toList();
        return (row, column) -> Optional.of(all.get(row).get(column));
    }

    private static Head outerHead(Device d) {
        String figure = d.mainLumen().orElseThrow().sections().get(0).proximal().map(p -> p.text())
                .orElse("not stated");
        return new Head(d.id(), d.name(), d.kind().word(), d.size(), "", figure, d.kind().word() + "s");
    }

    private static Head innerHead(Device d) {
        String figure = IntStream.range(0, d.sections().size()).mapToObj(i -> d.sections().get(i))
                .filter(s -> s.crossingProfile() || s.rigid()).findFirst()
                .flatMap(s -> s.distal() instanceof Contour.Round r ? r.diameter()
                        : Optional.empty())
                .map(p -> p.text()).orElse("");
        return new Head(d.id(), d.name(), d.kind().word(), d.size(), "", figure, d.kind().word() + "s");
    }
}
