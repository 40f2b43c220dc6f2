/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/** Every character is 1 mm wide at every size. */
final class TypewriterMeasure implements TextMeasure {

    @Override
    public double widthMm(String text, TextStyle style) {
        return text.codePointCount(0, text.length());
    }

    @Override
    public double ascentMm(TextStyle style) {
        return 1;
    }

    @Override
    public double descentMm(TextStyle style) {
        return 0.25;
    }

    @Override
    public double capHeightMm(TextStyle style) {
        return 0.75;
    }
}
