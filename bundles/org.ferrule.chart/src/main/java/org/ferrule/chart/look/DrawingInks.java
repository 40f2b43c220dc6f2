/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import java.util.HashMap;
import java.util.Map;

import org.ferrule.picture.Ink;

/** The inks of drawings and pages beside those of verdicts, and what all of them are on a dark screen. */
public final class DrawingInks {
    /** The wall of a lumen. */
    public static final Ink WALL = Ink.of("drawing.wall", 0x7D8791);
    /** The inside of a lumen. */
    public static final Ink LUMEN = Ink.of("drawing.lumen", 0xF4F7F9);
    /** A shaft. */
    public static final Ink SHAFT = Ink.of("drawing.shaft", 0xC9D3DC);
    /** The outline of a shaft. */
    public static final Ink SHAFT_LINE = Ink.of("drawing.shaft.line", 0x2E3943);
    /** Where an outline may lie. */
    public static final Ink TOLERANCE = Ink.of("drawing.tolerance", 0x9AA9B8);
    /** A wire. */
    public static final Ink WIRE = Ink.of("drawing.wire", 0xF0E4CB);
    /** The outline of a wire. */
    public static final Ink WIRE_LINE = Ink.of("drawing.wire.line", 0x7A6030);
    /** The place that decides. */
    public static final Ink LIMIT = Ink.of("drawing.limit", 0xA3195B);

    private static final Map<String, Integer> DARK = dark();

    private DrawingInks() {
    }

    private static Map<String, Integer> dark() {
        Map<String, Integer> dark = new HashMap<>(Map.of(Ink.TEXT.role(), 0xE6E8EB, Ink.MUTED.role(), 0xA9AFB7,
                Ink.RULE.role(), 0x565C64, Ink.PAPER.role(), 0x202226, Ink.BAND.role(), 0x2A2D32));
        dark.putAll(Map.of(WALL.role(), 0x8B95A0, LUMEN.role(), 0x2A3036, SHAFT.role(), 0x56626E,
                SHAFT_LINE.role(), 0xDDE5EC, TOLERANCE.role(), 0x7F8E9D, WIRE.role(), 0x6B5A34,
                WIRE_LINE.role(), 0xE3C78C,
                LIMIT.role(), 0xFF8FC0));
        for (CurveLook look : CurveLook.values()) {
            dark.put(look.ink().role(), look.darkRgb());
        }
        for (VerdictLook look : VerdictLook.values()) {
            Tone tone = look.tone(Scheme.DARK);
            dark.put(tone.ground().role(), rgb(tone.ground()));
            dark.put(tone.ink().role(), rgb(tone.ink()));
            tone.hatch().ifPresent(hatch -> dark.put(hatch.ink().role(), rgb(hatch.ink())));
        }
        return Map.copyOf(dark);
    }

    private static int rgb(Ink ink) {
        return ink.red() << 16 | ink.green() << 8 | ink.blue();
    }

    /** An ink in a scheme; inks with roles that are not known here stay as they are. */
    public static Ink in(Scheme scheme, Ink ink) {
        boolean known = scheme == Scheme.DARK && DARK.containsKey(ink.role());
        return known ? Ink.of(ink.role(), DARK.get(ink.role())) : ink;
    }
}
