/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import java.util.List;

import org.ferrule.picture.Dash;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Stroke;

/**
 * How up to eight curves in one plot look: each has a colour, a dash and a hatch of its own, so that they are told apart
 * without colour too.
 */
public enum CurveLook {
    FIRST(0x0B5CAD, 0x7FB7F2, Dash.SOLID, Hatch.Pattern.RISING), //
    SECOND(0xB34700, 0xFFA36B, Dash.of(2.2, 0.9), Hatch.Pattern.FALLING), //
    THIRD(0x1B7A4B, 0x6FD3A0, Dash.of(2.6, 0.7, 0.5, 0.7), Hatch.Pattern.VERTICAL), //
    FOURTH(0x7A3E9D, 0xCFA0EC, Dash.of(0.6, 0.7), Hatch.Pattern.HORIZONTAL), //
    FIFTH(0x8A6500, 0xE0BE5C, Dash.of(4.0, 1.0), Hatch.Pattern.DOTS), //
    SIXTH(0x00788A, 0x62D0E0, Dash.of(2.6, 0.7, 0.5, 0.7, 0.5, 0.7), Hatch.Pattern.RISING), //
    SEVENTH(0x5B5F66, 0xB9BEC6, Dash.of(1.2, 0.6), Hatch.Pattern.FALLING), //
    EIGHTH(0x2A2A2A, 0xF0F0F0, Dash.of(4.0, 0.8, 1.2, 0.8), Hatch.Pattern.VERTICAL);

    private static final double HATCH_SPACING_MM = 0.8;
    private static final double HATCH_LINE_MM = 0.1;
    private static final double HATCH_DOT_MM = 0.25;

    private final int light;
    private final int dark;
    private final Dash dash;
    private final Hatch.Pattern pattern;

    CurveLook(int light, int dark, Dash dash, Hatch.Pattern pattern) {
        this.light = light;
        this.dark = dark;
        this.dash = dash;
        this.pattern = pattern;
    }

    /**
     * The look of a curve.
     *
     * @param number from 0; there are eight
     */
    public static CurveLook of(int number) {
        return List.of(values()).get(number);
    }

    /** Its colour; its role is {@code curve.} and its number from 1. */
    public Ink ink() {
        return Ink.of(role(), light);
    }

    private String role() {
        return "curve." + (ordinal() + 1);
    }

    int darkRgb() {
        return dark;
    }

    /** The pattern of its line. */
    public Dash dash() {
        return dash;
    }

    /** Its line in some width. */
    public Stroke stroke(double widthMm) {
        return Stroke.of(ink(), widthMm).dashed(dash);
    }

    /** What fills the band round it. */
    public Hatch hatch() {
        return new Hatch(pattern, ink(), HATCH_SPACING_MM,
                pattern == Hatch.Pattern.DOTS ? HATCH_DOT_MM : HATCH_LINE_MM);
    }
}
