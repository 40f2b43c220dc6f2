/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.picture.Box;
import org.ferrule.picture.Picture;
import org.ferrule.profile.Compared;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.plot.View;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProfilePagesTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-03-09T12:00:00Z");

    @Test
    void everyPageHasTitleDateRuleSetAndCaution() {
        for (Picture page : pages(2)) {
            String text = Drawn.of(page).text();
            assertTrue(text.contains("Profiles compared") && text.contains("2026-03-09"), text);
            assertTrue(text.contains("Rule set: rules of the test, rev. 1"), text);
            assertTrue(text.contains("The instructions for use"), text);
        }
    }

    @Test
    void plotComesFirstThenDifferencesFindingsAndSources() {
        List<Picture> pages = pages(3);
        assertTrue(Drawn.of(pages.get(0)).hasGroup("curve:balloon 0:outer"));
        String rest = pages.stream().map(page -> Drawn.of(page).text()).collect(Collectors.joining(" "));
        for (String part : List.of("Crossing profile", "First contact, alone, hub to hub",
                "C in L1: stops at its balloon",
                "Where outer diameters cross", "Sources", "No source is stated.")) {
            assertTrue(rest.contains(part), part + " is missing in " + rest);
        }
        for (String part : List.of("L1 guide: narrowest inner diameter 1.15 mm", "claims of makers and bench results",
                "No two outer diameters cross.")) {
            assertEquals(1, rest.split(Pattern.quote(part), -1).length - 1, () -> part + " once in " + rest);
        }
    }

    @Test
    void manyFindingsTakeAsManyPagesAsTheyNeed() {
        List<Picture> pages = pages(8);
        List<String> texts = pages.stream()
                .flatMap(page -> Drawn.of(page).words().stream().map(Drawn.Words::text)).toList();
        assertEquals(1, texts.stream().filter("Sources"::equals).count());
        assertTrue(String.join(" ", texts).contains("H in L1: stops at its"), texts.toString());
    }

    @ParameterizedTest
    @ValueSource(ints = { 2, 3, 5, 8 })
    void everyLineStandsOnThePaperApartFromTheOthers(int devices) {
        for (Picture page : pages(devices)) {
            Drawn drawn = Drawn.of(page);
            assertEquals(List.of(), drawn.outside(page.paper().inset(8.95)));
            assertEquals(List.of(), drawn.overlaps().stream().filter(o -> !o.contains("\" L1")).toList());
            assertEquals(page.widthMm() - 9, drawn.words("2026-03-09").box().rightMm(), 0.01, "date at the right");
        }
    }

    /** Two devices leave room for the table below the plot; eight do not. */
    @Test
    void theTableStandsBelowThePlotOrAtTheTopOfTheNextPage() {
        assertTrue(Drawn.of(pages(2).get(0)).hasGroup("differences"));
        assertFalse(Drawn.of(pages(8).get(0)).hasGroup("differences"));
        Drawn next = Drawn.of(pages(8).get(1));
        assertTrue(next.words("Quantity").box().yMm() < 30);
        assertTrue(next.words("Sources").box().yMm() > next.marks("differences").stream()
                .mapToDouble(m -> m.box().bottomMm()).max().orElseThrow(), "findings come below it");
    }

    @Test
    void cellsOfTheTableStandInColumnsUnderTheirDevices() {
        Drawn drawn = Drawn.of(pages(2).get(0));
        List<Drawn.Words> cells = drawn.words().stream()
                .filter(w -> w.group().equals("differences")).toList();
        double left = drawn.words("Quantity").box().xMm();
        Box first = cells.stream().filter(w -> w.text().equals("A balloon 0")).findFirst().orElseThrow().box();
        Box second = cells.stream().filter(w -> w.text().equals("B balloon 1")).findFirst().orElseThrow().box();
        double column = (297 - 18 - 34 - 20) / 2.0;
        assertEquals(9.9, left, 0.01, "quantities at the left");
        assertEquals(left + 34 + 8, first.xMm(), 0.01, "the first device, behind a sample of its curve");
        assertEquals(first.xMm() + column, second.xMm(), 0.01, "the second");
        assertEquals(left + 34 + 2 * column, drawn.words("differ by").box().xMm(), 0.01, "what they differ by");
        Box value = cells.stream().filter(w -> w.text().startsWith("1.10 mm")).findFirst().orElseThrow().box();
        assertEquals(left + 34 + column, value.xMm(), 0.01, "values begin at the column");
        List<Box> lines = drawn.marks("differences").stream().map(Drawn.Mark::box).toList();
        assertTrue(lines.stream().anyMatch(line -> Math.abs(line.xMm() - left - 34) < 0.01
                && Math.abs(line.widthMm() - 6.5) < 0.01 && Math.abs(line.centre().yMm() - first.centre().yMm()) < 0.3),
                "a sample of the curve");
        assertTrue(lines.stream().filter(line -> line.widthMm() > 200).allMatch(line -> Math.abs(line.xMm() - 9) < 0.01
                && Math.abs(line.rightMm() - 288) < 0.01), "lines go across the table");
        List<Double> ends = lines.stream().filter(l -> l.widthMm() > 200 && l.heightMm() == 0).map(Box::yMm).toList();
        List<Box> bands = lines.stream().filter(l -> l.widthMm() > 200 && l.heightMm() > 0).toList();
        for (int i = 0; i < bands.size(); i++) {
            assertEquals(ends.get(2 * i), bands.get(i).yMm(), 0.01, "every other row is shaded");
            assertEquals(ends.get(2 * i + 1), bands.get(i).bottomMm(), 0.01, "as high as the row");
        }
        for (Drawn.Words cell : cells) {
            assertTrue(ends.stream().noneMatch(y -> y > cell.box().yMm() && y < cell.box().bottomMm()),
                    () -> "a line through " + cell);
        }
    }

    @Test
    void theHeadNamesRulesAndLibrariesWithTheirEditions() {
        Drawn drawn = Drawn.of(pages(2).get(0));
        assertEquals("Rule set: rules of the test, rev. 1 \u00b7 Libraries: devices \u00b7 Wire of 0.014 in",
                drawn.words().get(2).text());
        Box title = drawn.words("Profiles compared").box();
        Box basis = drawn.words().get(2).box();
        assertEquals(9, title.xMm(), 0.01);
        assertEquals(9, basis.xMm(), 0.01);
        assertTrue(basis.yMm() > title.bottomMm());
        assertTrue(drawn.marks().stream().anyMatch(m -> m.box().heightMm() == 0 && m.box().yMm() > basis.bottomMm()
                && m.box().yMm() < basis.bottomMm() + 4 && Math.abs(m.box().widthMm() - 279) < 0.01), "a line below");
        assertTrue(drawn.words("Outer diameters from the distal tip").box()
                .yMm() > basis.bottomMm() + 2.5, "the plot begins below the head");
    }

    private static List<Picture> pages(int devices) {
        SampleDevice[] balloons = IntStream.range(0, devices)
                .mapToObj(i -> balloon("balloon " + i, "1." + i + " mm", "0.6" + i + " mm"))
                .toArray(SampleDevice[]::new);
        ProfileComparison comparison = Compared.devices(balloons).in(guide("guide", "1.15 mm")).compare();
        Basis basis = new Basis(new Edition("rules of the test", "1"), List.of(new Edition("devices", "")),
                List.of("Wire of 0.014 in"));
        return ProfilePages.of(new ProfileContent(
                new Imprint("Profiles compared", "", "", "", LocalDate.parse("2026-03-09")), basis, comparison,
                View.distal(comparison), ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)),
                new PaperFormat(PaperFormat.Size.A4, true)), NOON).pages();
    }
}
