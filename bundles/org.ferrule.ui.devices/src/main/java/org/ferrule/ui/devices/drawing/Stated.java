/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.Optional;

import org.ferrule.model.Disc;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.FigureKind;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Offset;
import org.ferrule.ui.preferences.FigureWords;

/** A readable text of a document that states a length, and can state another one. */
sealed interface Stated {

    /** What the document holds. */
    Object value();

    String text();

    Length length();

    LengthUnit unit();

    /** What an arrow key moves it by. */
    Length step();

    Stated movedTo(Length length);

    /** What it amounts to, in the preferred units. */
    String words(FigureWords figures, FigureKind kind);

    /** A dimension, which is moved by its last printed digit. */
    record OfDimension(Dimension value) implements Stated {

        @Override
        public String text() {
            return value.text();
        }

        @Override
        public Length length() {
            return value.label();
        }

        @Override
        public LengthUnit unit() {
            return value.unit();
        }

        @Override
        public Length step() {
            return value.lastPlace();
        }

        @Override
        public Stated movedTo(Length length) {
            return new OfDimension(value.movedTo(length));
        }

        @Override
        public String words(FigureWords figures, FigureKind kind) {
            return figures.of(value, kind);
        }
    }

    /** Where a disc lies: moved as finely as its diameter is printed, since a plain 0 tells nothing. */
    record OfOffset(Offset value, Length step) implements Stated {

        static OfOffset of(Disc disc, Offset offset) {
            Length place = offset.lastPlace();
            return new OfOffset(offset, Optional.ofNullable(disc.getDiameter()).filter(Dimension::readable)
                    .map(diameter -> place.min(diameter.lastPlace())).orElse(place));
        }

        @Override
        public String text() {
            return value.text();
        }

        @Override
        public Length length() {
            return value.value();
        }

        @Override
        public LengthUnit unit() {
            return value.unit();
        }

        @Override
        public Stated movedTo(Length length) {
            return new OfOffset(value.movedTo(length), step);
        }

        @Override
        public String words(FigureWords figures, FigureKind kind) {
            return figures.of(value.value(), null);
        }
    }
}
