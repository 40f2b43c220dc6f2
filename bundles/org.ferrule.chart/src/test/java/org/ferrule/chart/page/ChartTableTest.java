/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.chart.DemoChart;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Device;
import org.ferrule.picture.Picture;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of a chart by itself: everything is there, whatever the width, and as large as it can be. */
class ChartTableTest {
    private static final List<Device> OUTER = DemoChart.outer();

    private static Picture table(int columns, double widthMm) {
        ChartContent content = DemoChart.content(OUTER, DemoChart.inner(columns).subList(0, columns));
        return ChartTable.of(content, ReasonWords.english(content.units()), widthMm);
    }

    @ParameterizedTest
    @CsvSource({ "1, 150", "3, 150", "9, 150", "3, 90" })
    void everyCellHeadAndNoteStandsOnThePaper(int columns, double widthMm) {
        Picture picture = table(columns, widthMm);
        Drawn drawn = Drawn.of(picture);
        assertEquals(widthMm, picture.widthMm());
        assertEquals(List.of(), drawn.outside(picture.paper()));
        assertEquals(List.of(), drawn.overlaps());
        for (int column = 0; column < columns; column++) {
            assertTrue(drawn.hasGroup("column:" + column), "column " + column);
            for (int row = 0; row < OUTER.size(); row++) {
                assertTrue(drawn.hasGroup("cell:" + row + "," + column), row + ", " + column);
            }
        }
        for (VerdictLook look : VerdictLook.values()) {
            assertTrue(drawn.hasGroup("legend:" + look.name()), look.word());
        }
    }

    @ParameterizedTest
    @CsvSource({ "2, true", "9, false" })
    void aFewColumnsAreSetLargerThanColumnsThatStandBelowEachOther(int columns, boolean larger) {
        double smallestPt = Drawn.of(table(columns, 150)).words().stream().mapToDouble(Drawn.Words::sizePt).min()
                .orElseThrow();
        assertEquals(larger, smallestPt > new PageStyle(1).small().sizePt(), smallestPt + " pt");
        assertFalse(smallestPt < new PageStyle(1).small().sizePt(), smallestPt + " pt");
    }
}
