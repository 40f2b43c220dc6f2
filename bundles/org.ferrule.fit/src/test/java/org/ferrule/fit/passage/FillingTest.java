/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** What fills a lumen most while a device passes. */
class FillingTest {

    private static List<Filling> worst(SampleQuestion question) {
        return Filling.worst(question.question(), Phase.IN);
    }

    private static List<Length> lengths(String... texts) {
        return Stream.of(texts).map(text -> length(text)).toList();
    }

    private static SampleDevice stepped(String tail) {
        return device("d", DeviceKind.MICROCATHETER).length("135 cm").section("tip", "0 cm", "5 cm", "0.8 mm")
                .section("shaft", "5 cm", "120 cm", "1 mm").section("tail", "120 cm", "135 cm", tail);
    }

    @Test
    void onlyTheThickestPartThatEntersCounts() {
        assertEquals(List.of(new Filling("bore 1", length("1.5 mm"), lengths("1 mm"), true)),
                worst(passage(stepped("1.2 mm"), guide("g", "1.5 mm")).reach("10 cm")));
        assertEquals(List.of(new Filling("bore 1", length("1.5 mm"), lengths("1.2 mm"), true)),
                worst(passage(stepped("1.2 mm"), guide("g", "1.5 mm"))));
    }

    @Test
    void aMissingFigureCountsOnlyWhereThePartEnters() {
        assertEquals(1, worst(passage(stepped("?"), guide("g", "1.5 mm")).reach("20 cm")).size());
        assertEquals(List.of(), worst(passage(stepped("?"), guide("g", "1.5 mm")).reach("21 cm")));
        assertEquals(List.of(), worst(passage(stepped("1 mm"), guide("g", "?"))));
        assertEquals(List.of(), worst(passage(stepped("1 mm"), guide("g", "2.5 mm"))
                .beside(rod("w", DeviceKind.OTHER, "190 cm", "?"), "5 cm")));
    }

    @Test
    void whatWasInflatedBeforeFillsMoreOnTheWayIn() {
        SampleDevice balloon = rod("b", DeviceKind.BALLOON_CATHETER, "4 mm", "0.4 mm").length("135 cm")
                .folded("balloon", "4 mm", "135 cm", "0.8 mm");
        TestRules rules = TestRules.exact().growth("1.1", "1.25", "1.3");
        assertEquals(lengths("0.8 mm"), worst(passage(balloon, guide("g", "1.5 mm")).under(rules)).get(0).devices());
        assertEquals(lengths("1 mm"), worst(passage(balloon, guide("g", "1.5 mm")).under(rules).afterInflation())
                .get(0).devices());
    }

    @Test
    void whatLiesThereCountsTooTheLargestFirst() {
        SampleDevice oval = device("o", DeviceKind.OTHER).length("135 cm").oval("shaft", "0 cm", "135 cm", "1.1 mm",
                "0.5 mm");
        List<Filling> worst = worst(passage(stepped("1 mm"), guide("g", "3 mm")).beside(oval, "30 cm"));
        assertEquals(List.of(new Filling("bore 1", length("3 mm"), lengths("1.1 mm", "1 mm"), false)), worst);
        SampleDevice exchange = balloon("b", "0.8 mm", "0.6 mm").takesWire("0.36 mm");
        assertEquals(lengths("0.6 mm", "0.36 mm"), worst(passage(exchange, guide("g", "3 mm"))).stream()
                .map(Filling::devices).filter(devices -> devices.size() == 2).findFirst().orElseThrow());
    }

    /** Neither the wider lumen with more in it nor the narrower one with less surpasses the other. */
    @Test
    void placesOfWhichNoneIsWorseAreAllTold() {
        SampleDevice two = device("g", DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm")
                .bore("0 mm", "50 cm", "2 mm").bore("50 cm", "100 cm", "1.5 mm");
        List<Filling> worst = worst(passage(rod("d", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm"), two)
                .beside(rod("w", DeviceKind.OTHER, "135 cm", "0.4 mm"), "-50 cm"));
        assertEquals(List.of(new Filling("bore 1", length("2 mm"), lengths("0.9 mm", "0.4 mm"), true),
                new Filling("bore 2", length("1.5 mm"), lengths("0.9 mm"), true)), worst);
    }
}
