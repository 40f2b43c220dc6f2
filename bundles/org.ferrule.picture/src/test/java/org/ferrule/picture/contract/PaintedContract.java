/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.function.Consumer;

import org.ferrule.picture.Box;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What must stand on the paper once a picture is written and painted, whatever the format. */
public abstract class PaintedContract {

    /** Pixels to the millimetre. */
    protected static final int PIXELS_PER_MM = 10;
    private static final Ink BLUE = Ink.of("sample.blue", 0x0000FF);
    private static final Ink BLACK = Ink.of("sample.black", 0x000000);
    private static final int WHITE = 0xFFFFFF;

    /** Writes the picture and paints what was written on white. */
    protected abstract BufferedImage painted(Picture picture) throws IOException;

    @Test
    void originIsTheUpperLeftCorner() throws IOException {
        BufferedImage page = painted(p -> p.noPen().fill(BLUE).rect(0, 0, 10, 5));
        assertEquals(0x0000FF, at(page, 5, 2.5));
        assertEquals(WHITE, at(page, 5, 6));
        assertEquals(WHITE, at(page, 5, 37));
        assertEquals(WHITE, at(page, 45, 2.5));
    }

    @Test
    void strokeLiesAstrideTheOutline() throws IOException {
        BufferedImage page = painted(p -> p.pen(BLACK, 2).circle(20, 20, 10));
        assertEquals(0, at(page, 29.5, 20));
        assertEquals(0, at(page, 30.5, 20));
        assertEquals(WHITE, at(page, 31.5, 20));
        assertEquals(WHITE, at(page, 20, 20));
    }

    @Test
    void innerPartOfAPathIsAHole() throws IOException {
        Outline ring = Outline.from(30, 20).arc(20, 20, 10, 0, 360).close()
                .moveTo(25, 20).arc(20, 20, 5, 0, 360).close();
        BufferedImage page = painted(p -> p.noPen().fill(BLUE).path(ring));
        assertEquals(0x0000FF, at(page, 27, 20));
        assertEquals(WHITE, at(page, 20, 20));
    }

    @Test
    void groupIsTurnedClockwiseScaledAndClipped() throws IOException {
        Frame frame = Frame.PLAIN.scaled(2, 2).rotated(90).translated(30, 10).clippedTo(new Box(0, 0, 10, 2));
        BufferedImage page = painted(p -> p.noPen().fill(BLUE).group(frame, g -> g.rect(0, 0, 10, 4)));
        assertEquals(0x0000FF, at(page, 28, 20));
        assertEquals(WHITE, at(page, 24, 20));
        assertEquals(WHITE, at(page, 28, 31));
    }

    @Test
    void groupLeavesTheCoordinatesAroundItAsTheyWere() throws IOException {
        BufferedImage page = painted(p -> p.noPen().fill(BLUE)
                .group(Frame.at(20, 20).clippedTo(new Box(0, 0, 1, 1)), g -> g.circle(0, 0, 1)).rect(5, 5, 5, 5));
        assertEquals(0x0000FF, at(page, 7, 7));
    }

    /** The share of the area that lines of width w at spacing s cover is w/s; two families cover 2w/s - (w/s)^2. */
    @ParameterizedTest
    @EnumSource
    void hatchCoversItsShareOfTheAreaAndNothingOutside(Hatch.Pattern pattern) throws IOException {
        Hatch hatch = new Hatch(pattern, BLACK, 2, 0.5);
        BufferedImage page = painted(p -> p.noPen().fill(Fill.of(hatch)).rect(10, 10, 20, 20));
        double share = switch (pattern) {
            case DOTS -> Math.PI * 0.25 * 0.25 / 4;
            case GRID, LATTICE -> 2 * 0.25 - 0.25 * 0.25;
            default -> 0.25;
        };
        assertEquals(share * 400, inkMm2(page, new Box(10, 10, 20, 20)), 8, pattern.toString());
        assertEquals(0, inkMm2(page, new Box(10, 31, 20, 5)), 0.1);
    }

    @Test
    void hatchRisesToTheRight() throws IOException {
        Hatch hatch = new Hatch(Hatch.Pattern.RISING, BLACK, 4, 1);
        BufferedImage page = painted(p -> p.noPen().fill(Fill.of(hatch)).rect(0, 0, 40, 40));
        double y = firstDark(page, 20, 10);
        assertEquals(y - 2, firstDark(page, 22, y - 2 - 1), 0.2);
    }

    @Test
    void textStandsOnItsBaselineAndKeepsItsAnchor() throws IOException {
        TextStyle style = TextStyle.ofMm(10).in(BLACK);
        double width = TextMeasure.standard().widthMm("HH", style);
        double height = TextMeasure.standard().capHeightMm(style);
        assertInk(new Box(20, 20 - height, width, height), p -> p.lettering(style).text(20, 20, "HH"));
        assertInk(new Box(20 - width / 2, 20 - height, width, height),
                p -> p.lettering(style).textMiddle(20, 20, "HH"));
        assertInk(new Box(30 - width, 20 - height, width, height), p -> p.lettering(style).textEnd(30, 20, "HH"));
        assertInk(new Box(20 - height, 30 - width, height, width),
                p -> p.lettering(style).text(20, 30, "HH", Text.Anchor.START, -90));
    }

    private void assertInk(Box expected, Consumer<PictureBuilder> content) throws IOException {
        BufferedImage page = painted(content);
        double all = inkMm2(page, new Box(0, 0, 50, 40));
        double inside = inkMm2(page, expected.inset(-0.1));
        assertTrue(all > 5, "hardly any ink: " + all + " mm2");
        assertEquals(all, inside, 0.1, "ink outside " + expected);
    }

    private static double firstDark(BufferedImage page, double xMm, double fromYMm) {
        double y = fromYMm;
        while (at(page, xMm, y) != 0) {
            y += 1.0 / PIXELS_PER_MM;
        }
        return y;
    }

    /** The blackened area within a box. */
    protected static double inkMm2(BufferedImage page, Box box) {
        double pixels = 0;
        for (int x = (int) (box.xMm() * PIXELS_PER_MM); x < box.rightMm() * PIXELS_PER_MM; x++) {
            for (int y = (int) (box.yMm() * PIXELS_PER_MM); y < box.bottomMm() * PIXELS_PER_MM; y++) {
                pixels += 1 - (page.getRGB(x, y) >> 8 & 0xFF) / 255.0;
            }
        }
        return pixels / (PIXELS_PER_MM * PIXELS_PER_MM);
    }

    private static int at(BufferedImage page, double xMm, double yMm) {
        return page.getRGB((int) (xMm * PIXELS_PER_MM), (int) (yMm * PIXELS_PER_MM)) & 0xFFFFFF;
    }

    private BufferedImage painted(Consumer<PictureBuilder> content) throws IOException {
        PictureBuilder builder = new PictureBuilder();
        content.accept(builder);
        return painted(builder.picture(50, 40, "Painted"));
    }
}
