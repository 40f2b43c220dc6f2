/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Drawn.Words;
import org.ferrule.picture.Box;
import org.ferrule.picture.Picture;
import org.ferrule.profile.plot.PlotArea;

/** What holds for every plot, however large it is. */
public final class Laid {
    private static final double MARGIN_MM = 1.95;
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private Laid() {
    }

    /** All words stand apart from each other, 2 mm and more from the edges; lines and shapes lie on the paper. */
    public static void assertTidy(Picture picture) {
        Drawn drawn = Drawn.of(picture);
        assertEquals(List.of(), drawn.outside(picture.paper().inset(MARGIN_MM)), "words too near to the edge");
        assertEquals(List.of(), drawn.overlaps());
        drawn.marks().forEach(mark -> assertTrue(lies(mark.box(), picture.paper()), mark::toString));
    }

    private static boolean lies(Box box, Box paper) {
        return box.xMm() >= 1 && box.yMm() >= 1 && box.rightMm() <= paper.rightMm() - 1
                && box.bottomMm() <= paper.bottomMm() - 1;
    }

    /** The numbers below a plot stand under the values that they name, at least four of them in even steps. */
    public static void assertNumbersAlong(Picture picture, PlotArea area, double perUnit) {
        List<Words> numbers = numbers(picture).filter(w -> w.box().yMm() > area.box().bottomMm()
                && w.box().bottomMm() < area.box().bottomMm() + 5).toList();
        assertEven(numbers, w -> area.along(w.box().centre().xMm()) / perUnit);
        numbers.forEach(number -> {
            double x = area.x(Double.parseDouble(number.text()) * perUnit);
            assertTrue(Drawn.of(picture).marks().stream().map(Drawn.Mark::box)
                    .anyMatch(tick -> near(x, tick.xMm()) && near(0, tick.widthMm())
                            && near(area.box().bottomMm(), tick.yMm()) && near(0.9, tick.heightMm())),
                    () -> "no tick at " + number.text());
        });
        double left = area.box().xMm();
        double right = area.box().rightMm();
        assertTrue(numbers.stream().allMatch(w -> w.box().centre().xMm() >= left - 0.01
                && w.box().centre().xMm() <= right + 0.01), numbers::toString);
    }

    /** The numbers to the left of a plot stand beside the values that they name, with a line through the plot. */
    public static void assertNumbersAcross(Picture picture, PlotArea area, double perUnit) {
        List<Words> numbers = numbers(picture).filter(w -> near(area.box().xMm() - 1, w.box().rightMm())).toList();
        assertEven(numbers, w -> area.across(w.box().centre().yMm()) / perUnit);
        numbers.forEach(number -> {
            double y = area.y(Double.parseDouble(number.text()) * perUnit);
            assertTrue(Drawn.of(picture).marks().stream().map(Drawn.Mark::box)
                    .anyMatch(line -> near(y, line.yMm()) && near(0, line.heightMm())
                            && near(area.box().xMm(), line.xMm()) && near(area.box().rightMm(), line.rightMm())),
                    () -> "no line at " + number.text());
        });
        assertTrue(numbers.stream().allMatch(w -> w.box().centre().yMm() >= area.box().yMm() - 0.01
                && w.box().centre().yMm() <= area.box().bottomMm() + 0.01), numbers::toString);
    }

    private static Stream<Words> numbers(Picture picture) {
        return Drawn.of(picture).words().stream().filter(w -> NUMBER.matcher(w.text()).matches());
    }

    private static void assertEven(List<Words> numbers, ToDoubleFunction<Words> value) {
        assertTrue(numbers.size() >= 3, () -> "too few numbers: " + numbers);
        double step = Double.parseDouble(numbers.get(1).text()) - Double.parseDouble(numbers.get(0).text());
        assertTrue(step > 0, () -> "numbers fall: " + numbers);
        for (int i = 0; i < numbers.size(); i++) {
            double number = Double.parseDouble(numbers.get(i).text());
            assertEquals(number, value.applyAsDouble(numbers.get(i)), step / 100, numbers.get(i)::toString);
            assertEquals(Double.parseDouble(numbers.get(0).text()) + i * step, number, 1e-9, numbers::toString);
        }
    }

    public static boolean near(double expectedMm, double actualMm) {
        return Math.abs(expectedMm - actualMm) < 0.01;
    }

    public static void assertNear(double expectedMm, double actualMm, String what) {
        assertEquals(expectedMm, actualMm, 0.01, what);
    }
}
