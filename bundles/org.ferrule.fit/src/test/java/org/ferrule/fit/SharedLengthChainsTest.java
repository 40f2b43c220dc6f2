/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;

import org.apache.commons.csv.CSVRecord;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.SharedTable;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.sample.Texts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lengths add up as people of the trade add them up (rows with their sources in shared/length-chains.csv). */
class SharedLengthChainsTest {

    static List<CSVRecord> rows() {
        return SharedTable.rows("length-chains.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void marginIsThePublishedOne(CSVRecord row) {
        LengthChain.Question asked = LengthChain.Question.valueOf(
                row.get("chain").toUpperCase(Locale.ROOT).replace(' ', '_'));
        LengthChain chain = question(row).in().evidence().stream().filter(LengthChain.class::isInstance)
                .map(LengthChain.class::cast).filter(c -> c.question() == asked).findFirst().orElseThrow();
        assertEquals(Texts.length(row.get("marginCm") + " cm"), chain.margin());
    }

    private static SampleQuestion question(CSVRecord row) {
        SampleDevice guide = device("g", DeviceKind.GUIDE_CATHETER).length(row.get("outerLength"))
                .working(row.get("outerLength"), "2 mm");
        SampleQuestion question = passage(inner(row), guide).reach(row.get("reach")).under(rules(row));
        return row.get("wire").isEmpty() ? question
                : question.over(SampleDevice.rod("w", DeviceKind.GUIDEWIRE, row.get("wire"), "0.014 in"));
    }

    private static SampleDevice inner(CSVRecord row) {
        String length = row.get("deviceLength");
        SampleDevice device = SampleDevice.rod("d", DeviceKind.OTHER, length, "0.9 mm");
        return switch (row.get("chain")) {
            case "port inside" -> device.sidePort(row.get("tube"), "0.016 in");
            case "overlap" -> device.lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 mm", row.get("tube"));
            default -> device.overTheWire(length, "0.016 in");
        };
    }

    private static TestRules rules(CSVRecord row) {
        TestRules rules = TestRules.exact();
        allow(rules, Purpose.HUB_AND_VALVE, row.get("valve"));
        allow(rules, Purpose.GRIP, row.get("grip"));
        allow(rules, Purpose.EXTENSION_OVERLAP, row.get("overlap"));
        return rules;
    }

    private static void allow(TestRules rules, Purpose purpose, String length) {
        if (!length.isEmpty()) {
            rules.allow(purpose, length);
        }
    }
}
