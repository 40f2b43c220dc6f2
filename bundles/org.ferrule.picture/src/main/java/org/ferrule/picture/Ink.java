/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A colour by what it is for. Print uses the red, green and blue; a screen may choose its own colour for the role, for
 * instance under a dark theme.
 *
 * @param role what the colour is for: lower-case words, digits and dashes, joined by dots, such as {@code "text"} or
 *             {@code "verdict.fits"}
 * @param red 0 to 255 (sRGB)
 * @param green 0 to 255 (sRGB)
 * @param blue 0 to 255 (sRGB)
 */
public record Ink(String role, int red, int green, int blue) {

    private static final Pattern ROLE = Pattern.compile("[a-z][a-z0-9-]*(\\.[a-z0-9][a-z0-9-]*)*");

    /** What is to be read. */
    public static final Ink TEXT = of("text", 0x1A1A1A);
    /** What stands back: notes, units, secondary figures. */
    public static final Ink MUTED = of("text.muted", 0x5A5F66);
    /** Thin lines of tables and axes. */
    public static final Ink RULE = of("rule", 0xB4B9C0);
    /** The paper itself. */
    public static final Ink PAPER = of("paper", 0xFFFFFF);
    /** Bands behind headings and every other row. */
    public static final Ink BAND = of("paper.band", 0xF1F3F5);

    public Ink {
        if (!ROLE.matcher(role).matches()) {
            throw new IllegalArgumentException("Not the name of a role: \"" + role + "\"");
        }
        checkChannel("red", red);
        checkChannel("green", green);
        checkChannel("blue", blue);
    }

    /** An ink from its role and 0xRRGGBB. */
    public static Ink of(String role, int rgb) {
        if (rgb >>> 24 != 0) {
            throw new IllegalArgumentException("Not a colour of the form 0xRRGGBB: 0x" + Integer.toHexString(rgb));
        }
        return new Ink(role, rgb >> 16, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** The colour for print as {@code #rrggbb}. */
    public String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }

    private static void checkChannel(String name, int value) {
        if (value < 0 || value > 255) {
            throw new IllegalArgumentException(name + " must be 0 to 255, but is " + value);
        }
    }
}
