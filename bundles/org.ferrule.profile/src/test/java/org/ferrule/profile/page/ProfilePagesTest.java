/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.IntStream;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.picture.Picture;
import org.ferrule.profile.Compared;
import org.ferrule.profile.Drawn;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.plot.View;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

class ProfilePagesTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-03-09T12:00:00Z");

    @Test
    void everyPageHasTitleDateRuleSetAndCaution() {
        for (Picture page : pages(2)) {
            String text = String.join(" ", Drawn.texts(page));
            assertTrue(text.contains("Profiles compared") && text.contains("2026-03-09"), text);
            assertTrue(text.contains("Rule set: rules of the test, rev. 1"), text);
            assertTrue(text.contains("The instructions for use"), text);
        }
    }

    @Test
    void plotComesFirstThenDifferencesFindingsAndSources() {
        List<Picture> pages = pages(3);
        assertTrue(Drawn.ids(pages.get(0)).contains("curve:balloon 0:outer"));
        String rest = pages.stream().flatMap(page -> Drawn.texts(page).stream()).reduce("", (a, b) -> a + " " + b);
        for (String part : List.of("Crossing profile", "First contact, alone, hub to hub",
                "C in L1: stops at its balloon",
                "Where outer diameters cross", "Sources", "No source is stated.")) {
            assertTrue(rest.contains(part), part + " is missing in " + rest);
        }
    }

    @Test
    void manyFindingsTakeAsManyPagesAsTheyNeed() {
        List<Picture> pages = pages(8);
        List<String> texts = pages.stream().flatMap(page -> Drawn.texts(page).stream()).toList();
        assertEquals(1, texts.stream().filter("Sources"::equals).count());
        assertTrue(String.join(" ", texts).contains("H in L1: stops at its"), texts.toString());
    }

    private static List<Picture> pages(int devices) {
        SampleDevice[] balloons = IntStream.range(0, devices)
                .mapToObj(i -> balloon("balloon " + i, "1." + i + " mm", "0.6" + i + " mm"))
                .toArray(SampleDevice[]::new);
        ProfileComparison comparison = Compared.devices(balloons).in(guide("guide", "1.15 mm")).compare();
        Basis basis = new Basis(new Edition("rules of the test", "1"), List.of(new Edition("devices", "")), List.of());
        return ProfilePages.of(new ProfileContent(
                new Imprint("Profiles compared", "", "", "", LocalDate.parse("2026-03-09")), basis, comparison,
                View.distal(comparison), ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)),
                new PaperFormat(PaperFormat.Size.A4, true)), NOON).pages();
    }
}
