/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.Parts.MarkerPart;
import org.ferrule.fit.rules.Limits;
import org.ferrule.fit.rules.Limits.FlowUse;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.rules.Limits.RatioUse;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.rules.Span;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Pressure;
import org.junit.jupiter.api.Test;

class TranslationTest {

    @Test
    void copiesTheBalloonWithItsTable() {
        Parts.BalloonPart balloon = device("""
                "balloon": {"section": "balloon", "diameter": "2.50 mm", "length": "15 mm",
                  "nominalPressure": "8 atm", "ratedBurstPressure": "14 atm",
                  "compliance": [{"pressure": "8 atm", "diameter": "2.50 mm"},
                                 {"pressure": "14 atm", "diameter": "2.66 mm"}]}""").parts().balloon().orElseThrow();
        assertEquals(
                new Parts.BalloonPart("balloon", Optional.of(Dimension.parse("2.50 mm")),
                        Optional.of(Dimension.parse("15 mm")), Optional.of(Pressure.parse("8 atm")),
                        Optional.of(Pressure.parse("14 atm")), balloon.compliance()),
                balloon);
        assertEquals(List.of("2.50 mm", "2.66 mm"),
                balloon.compliance().stream().map(r -> r.diameter().text()).toList());
    }

    @Test
    void usesNoTableWithARowThatCannotBeRead() {
        Parts.BalloonPart balloon = device("""
                "balloon": {"ratedBurstPressure": "14", "compliance": [
                  {"pressure": "8 atm", "diameter": "2.50 mm"}, {"pressure": "10 atm", "diameter": "2.6"},
                  {"pressure": "14 atm", "diameter": "2.66 mm"}]}""").parts().balloon().orElseThrow();
        assertEquals(List.of(), balloon.compliance());
        assertEquals(Optional.empty(), balloon.ratedBurstPressure());
    }

    @Test
    void copiesStentCutterImagingPlaneAndMarkers() {
        Parts parts = device("""
                "markers": [{"at": "20 mm", "width": "1 mm"}, {"at": "5 mm"}, {"width": "1 mm"}],
                "stent": {"section": "stent", "diameter": "3 mm", "length": "18 mm", "maximumDiameter": "3.75 mm"},
                "cutter": {"section": "burr", "type": "burr", "diameter": "1.25 mm"},
                "transducer": {"type": "optical", "at": "24 mm"}""").parts();
        assertEquals(List.of(new MarkerPart(Length.ofMm(20), Optional.of(Length.ofMm(1))),
                new MarkerPart(Length.ofMm(5), Optional.empty())), parts.markers());
        assertEquals("3.75 mm", parts.stent().orElseThrow().largestDiameter().orElseThrow().text());
        assertEquals("1.25 mm", parts.cutter().orElseThrow().diameter().orElseThrow().text());
        assertEquals(Optional.of(Length.ofMm(24)), parts.imagingPlane());
    }

    @Test
    void tellsAWireThatCannotBeExtendedFromOneOfWhichNobodySays() {
        assertEquals(Optional.empty(), device("\"wire\": {\"coating\": \"none\"}").parts().extendable());
        assertEquals(Optional.of(false), device("\"wire\": {\"extendable\": false}").parts().extendable());
        assertEquals(Optional.of(true), device("\"wire\": {\"extendable\": true}").parts().extendable());
    }

    @Test
    void claimSpeaksOfTheDeviceAloneUnlessItSaysOtherwise() {
        List<Claim> claims = device("""
                "claims": [{"type": "compatible", "kinds": ["guide catheter"]},
                           {"type": "compatible", "kinds": ["guide catheter"], "alone": true},
                           {"type": "compatible", "kinds": ["guide catheter"], "alone": false}]""").claims();
        assertEquals(List.of(false, false, true), claims.stream().map(Claim::besideOthers).toList());
    }

    @Test
    void wireThatALineTakesSpeaksByTheSourceOfTheLine() {
        Device inherited = translated("""
                "lines": [{"id": "l", "takesWire": "0.014 in", "source": "p"}],
                "devices": [{"id": "d", "line": "l", "source": "x"}]""");
        assertEquals("Practice", inherited.wireSource().title());
        assertEquals("Practice", device("\"takesWire\": \"0.014 in\", \"source\": \"p\"").wireSource().title());
        assertEquals("", device("\"source\": \"p\"").wireSource().title());
    }

    @Test
    void copiesLimitsWithTheirSources() {
        Limits limits = rules("""
                "flowLimits": [{"use": "pressure", "least": 0.3, "source": "p"}],
                "allowances": [{"purpose": "hub and valve", "length": "7 cm", "source": "p"},
                               {"purpose": "hub and valve", "length": "8 cm", "source": "p"}],
                "ratioBands": [{"use": "burr to vessel", "high": 0.6, "meaning": "usual", "source": "p"}],
                "chanceLimits": [{"greatest": 0.01, "source": "p"}]""").limits();
        assertEquals(FlowUse.PRESSURE, limits.flow().get(0).use());
        assertEquals(Length.ofMm(80), limits.allowance(Purpose.HUB_AND_VALVE).orElseThrow().length());
        assertEquals(RatioUse.BURR_TO_VESSEL, limits.ratios().get(0).use());
        assertEquals(Optional.empty(), limits.ratios().get(0).low());
        assertEquals(new BigDecimal("0.01"), limits.chances().get(0).greatest());
        assertEquals("Practice", limits.chances().get(0).source().title());
    }

    @Test
    void saysWhichFiguresRunLow() {
        RuleSet rules = rules("""
                "spans": [{"figure": "crossing profile", "below": "0 mm", "above": "0.1 mm", "runsLow": true},
                          {"figure": "outer diameter", "below": "0 mm", "above": "0.1 mm"}]""");
        assertEquals(List.of(true, false), rules.spans().stream().map(Span::runsLow).toList());
    }

    @Test
    void namesTheLimitThatLacksSomething() {
        assertTrue(failure("\"allowances\": [{\"purpose\": \"grip\"}]").contains("grip"));
        assertTrue(failure("\"flowLimits\": [{\"least\": 0.2}]").contains("\"use\""));
        assertTrue(failure("\"chanceLimits\": [{}]").contains("\"greatest\""));
    }

    private static String failure(String keys) {
        return assertThrows(RuleSetException.class, () -> rules(keys)).getMessage();
    }

    private static Device device(String keys) {
        return translated("\"devices\": [{\"id\": \"d\", " + keys + "}]");
    }

    private static Device translated(String keys) {
        DeviceLibrary library = (DeviceLibrary) read("ferrule.devices", keys, "x.devices.json");
        return new DeviceTranslator(library).translate(library.getDevices().get(0));
    }

    private static RuleSet rules(String keys) {
        return RuleTranslator.translate((org.ferrule.model.RuleSet) read("ferrule.rules", keys, "x.rules.json"));
    }

    private static Document read(String format, String keys, String name) {
        String json = "{\"format\": \"" + format + "\", \"version\": 1, \"sources\": [{\"id\": \"p\", "
                + "\"title\": \"Practice\", \"kind\": \"common practice\"}]," + keys + "}";
        return new JsonDocuments().read(json.getBytes(StandardCharsets.UTF_8), name).document().orElseThrow();
    }
}
