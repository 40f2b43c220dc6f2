/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.table;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;

import org.eclipse.swt.graphics.Image;

/**
 * A column of a {@link RowTable}.
 *
 * @param title what stands in its head
 * @param tooltip more about it; may be empty
 * @param characters how wide it is at first
 * @param text the text of its cell
 * @param image the image of its cell, null for none
 * @param muted whether its cell stands back
 * @param rising the order when sorted, cells without a value last
 * @param falling the reverse order, cells without a value last too
 */
public record RowColumn<R>(String title, String tooltip, int characters, Function<R, String> text,
        Function<R, Image> image, Predicate<R> muted, Comparator<R> rising, Comparator<R> falling) {

    /** Creates a column that is sorted by its texts. */
    public static <R> RowColumn<R> of(String title, int characters, Function<R, String> text) {
        RowColumn<R> plain = new RowColumn<>(title, "", characters, text, row -> null, row -> false, null, null);
        return plain.sortedBy(row -> sortable(text.apply(row)));
    }

    private static String sortable(String text) {
        return text.isEmpty() ? null : text.toLowerCase(Locale.ROOT);
    }

    /** Returns this column, sorted by something else; null goes last. */
    public <K extends Comparable<? super K>> RowColumn<R> sortedBy(Function<R, K> key) {
        return new RowColumn<>(title, tooltip, characters, text, image, muted,
                Comparator.comparing(key, Comparator.nullsLast(Comparator.naturalOrder())),
                Comparator.comparing(key, Comparator.nullsLast(Comparator.reverseOrder())));
    }

    /** Returns this column with more about it for the mouse that rests on its head. */
    public RowColumn<R> explained(String words) {
        return new RowColumn<>(title, words, characters, text, image, muted, rising, falling);
    }

    /** Returns this column with images. */
    public RowColumn<R> withImage(Function<R, Image> images) {
        return new RowColumn<>(title, tooltip, characters, text, images, muted, rising, falling);
    }

    /** Returns this column with some cells that stand back. */
    public RowColumn<R> mutedWhen(Predicate<R> condition) {
        return new RowColumn<>(title, tooltip, characters, text, image, condition, rising, falling);
    }
}
