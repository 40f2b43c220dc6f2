/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture.contract;

import java.util.List;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Fill;
import org.ferrule.picture.FontFace;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/** Pictures that use everything there is. */
public final class SamplePictures {

    private static final Ink BLUE = Ink.of("sample.blue", 0x2166AC);
    private static final Ink AMBER = Ink.of("sample.amber", 0xF4A582);

    private SamplePictures() {
    }

    /** A page of 120 mm x 160 mm with every kind of element, stroke, fill, face and frame. */
    public static Picture everything() {
        PictureBuilder page = new PictureBuilder()
                .lettering(TextStyle.ofPt(14).bold()).text(10, 12, "Every kind of element")
                .pen(Ink.RULE, 0.3).line(10, 15, 110, 15);
        shapes(page);
        hatches(page);
        faces(page);
        anchors(page);
        frames(page);
        return page.picture(120, 160, "Every kind of element & <all> \"signs\"")
                .described("Shapes, hatches, text and groups.\nFor the tests of the writers.");
    }

    /** A page with nothing on it. */
    public static Picture blank() {
        return new PictureBuilder().picture(30, 20, "");
    }

    private static void shapes(PictureBuilder page) {
        page.pen(Ink.TEXT, 0.4).fill(AMBER).rect(10, 20, 15, 10)
                .roundRect(new Box(30, 20, 15, 10), 2)
                .pen(Stroke.of(BLUE, 0.6).dashed(Dash.DASHED)).noFill().roundRect(new Box(50, 20, 15, 10), 5)
                .pen(Stroke.of(BLUE, 0.3).dashed(Dash.CENTRE_LINE)).line(68, 25, 88, 25)
                .pen(Ink.TEXT, 0.2).fill(Ink.BAND).circle(78, 25, 4)
                .noPen().fill(BLUE).ellipse(98, 25, 8, 4)
                .pen(Stroke.of(Ink.TEXT, 1).rounded()).noFill()
                .polyline(new Point(12, 42), new Point(17, 35), new Point(22, 42), new Point(25, 36))
                .pen(Ink.TEXT, 0.3).fill(AMBER).polygon(new Point(32, 42), new Point(38, 34), new Point(44, 42))
                .path(Outline.from(50, 42).curveTo(52, 30, 62, 46, 65, 34))
                .path(Outline.from(82, 38).arc(78, 38, 4, 0, 360).close().moveTo(80, 38).arc(78, 38, 2, 0, 360).close())
                .path(Outline.from(98, 38).arc(98, 38, 4, -60, 300).close());
    }

    private static void hatches(PictureBuilder page) {
        page.pen(Ink.TEXT, 0.2);
        Hatch.Pattern[] patterns = Hatch.Pattern.values();
        for (int i = 0; i < patterns.length; i++) {
            page.fill(Fill.of(Hatch.of(patterns[i], BLUE))).rect(10 + 14 * i, 48, 12, 8);
        }
        page.fill(Fill.of(Ink.BAND, new Hatch(Hatch.Pattern.RISING, Ink.TEXT, 2, 0.5))).circle(111, 52, 4).noFill();
    }

    private static void faces(PictureBuilder page) {
        TextStyle style = TextStyle.ofPt(7.5);
        double y = 64;
        for (FontFace face : FontFace.values()) {
            page.lettering(style.in(face))
                    .text(10, y, "Lumen ⌀ 1.78 mm ±0.03 ≥ 0.070 in, ≤ 5 µm – 2 × 6 Fr → ✓ “Größe” é Å ő");
            y += 5;
        }
        List<String> lines = TextLayout.standard().wrap(
                "Wrapped text: the office configuration affects the first flow; fi fl ffi stay letters.", style, 45);
        page.lettering(style.in(Ink.MUTED)).lines(10, y + 2, 3.5, lines);
    }

    private static void anchors(PictureBuilder page) {
        page.pen(Ink.RULE, 0.2).line(85, 82, 85, 100).lettering(TextStyle.ofPt(9))
                .text(85, 86, "start").textMiddle(85, 91, "middle").textEnd(85, 96, "end")
                .text(65, 99, "upwards", Text.Anchor.START, -90)
                .text(70, 93, "turned", Text.Anchor.MIDDLE, 90)
                .text(100, 88, "aslant", Text.Anchor.START, 30);
    }

    private static void frames(PictureBuilder page) {
        Frame clipped = Frame.at(10, 108).clippedTo(new Box(0, 0, 20, 15))
                .withId("clipped & named").withTooltip("Clipped <group>\nsecond line");
        Frame turned = Frame.PLAIN.scaled(1.5, 1.5).rotated(20).translated(50, 108);
        page.pen(Ink.TEXT, 0.3).fill(Fill.of(Hatch.of(Hatch.Pattern.GRID, AMBER)))
                .group(clipped, g -> g.text(1, 3, "clipped").circle(14, 12, 8))
                .group(turned, g -> g.rect(0, 0, 15, 8).lettering(TextStyle.ofPt(7).bold()).text(1, 5, "in a frame")
                        .group(Frame.at(0, 10).withId("inner"), h -> h.noFill().rect(0, 0, 15, 4)))
                .place(85, 108, new PictureBuilder().fill(BLUE).circle(25, 10, 12).picture(25, 20, "placed"));
    }
}
