/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;

import org.apache.commons.csv.CSVRecord;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.SharedTable;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The check values of {@code shared/passages.csv}; columns and sources are explained in {@code passages.md}. */
class SharedPassagesTest {
    private static final String NOT_STATED = "?";

    /** A row, shown by its id. */
    record Row(CSVRecord fields) {
        String get(String column) {
            return fields.get(column);
        }

        @Override
        public String toString() {
            return get("id");
        }
    }

    static Stream<Row> rows() {
        return SharedTable.rows("passages.csv").stream().map(Row::new);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTable(Row row) {
        PhaseAnswer answer = question(row).in();
        assertEquals(row.get("verdict"), answer.verdict().word(), () -> answer.reasons().toString());
        if (!row.get("clearanceMm").isEmpty()) {
            double nominal = answer.clearance().orElseThrow().nominal().mm();
            assertEquals(Double.parseDouble(row.get("clearanceMm")), nominal, 0.5e-6);
        }
        if (!row.get("limiting").isEmpty()) {
            assertEquals(row.get("limiting"), answer.limiting().orElseThrow().deviceSection());
        }
    }

    private static SampleQuestion question(Row row) {
        TestRules rules = TestRules.exact().required(row.get("required"));
        SampleQuestion question = passage(inner(row), outer(row)).under(rules);
        for (String occupant : row.get("occupants").isEmpty() ? new String[0] : row.get("occupants").split("; ")) {
            question.beside(rod("occupant", DeviceKind.OTHER, "200 cm", occupant), "10 cm");
        }
        if (row.get("direction").equals("over wire tail")) {
            return question.overTail().reach(row.get("stopsAt"));
        }
        return row.get("reach").isEmpty() ? question : question.reach(row.get("reach"));
    }

    private static SampleDevice outer(Row row) {
        String lumen = row.get("lumen").isEmpty() ? NOT_STATED : row.get("lumen");
        return device("outer", DeviceKind.OTHER).length(row.get("lumenLength"))
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", row.get("lumenLength"))
                .bore("0 mm", row.get("lumenLength"), lumen);
    }

    private static SampleDevice inner(Row row) {
        SampleDevice device = device("inner", DeviceKind.OTHER);
        for (String section : row.get("device").split("; ")) {
            String[] parts = section.split(" to |: ");
            device.section(inMm(parts[0]) + " to " + inMm(parts[1]), parts[0], parts[1], parts[2]).length(parts[1]);
        }
        return row.get("wire").isEmpty() ? device
                : device.takesWire(row.get("wire")).sidePort(row.get("wirePort"), NOT_STATED);
    }

    private static String inMm(String station) {
        return length(station).toString();
    }
}
