/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.apache.commons.csv.CSVRecord;
import org.ferrule.fit.sample.SharedTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The check values of rigid parts in bends, by a method that knows no formula (computed; closed form). */
class TorusTest {
    private static final double HAIR_MM = 2e-4;

    static List<CSVRecord> longestLengths() {
        return SharedTable.rows("rigid-in-bend.csv").stream().filter(r -> r.get("asked").equals("longest")).toList();
    }

    @ParameterizedTest
    @MethodSource("longestLengths")
    void longestPartJustFindsRoom(CSVRecord row) {
        Torus torus = new Torus(mm(row, "lumenMm"), mm(row, "radiusMm"));
        double longest = mm(row, "expectedMm");
        assertTrue(torus.room(mm(row, "deviceMm"), longest - HAIR_MM) >= 0, row.toString());
        assertTrue(torus.room(mm(row, "deviceMm"), longest + HAIR_MM) < 0, row.toString());
    }

    private static double mm(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
