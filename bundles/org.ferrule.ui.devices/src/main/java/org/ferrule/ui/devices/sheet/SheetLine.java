/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Optional;

/** A line of the table: a row, or the head of a group of rows. */
public sealed interface SheetLine {

    /** Returns the row; nothing for a head. */
    Optional<SheetRow> row();

    /**
     * A row.
     *
     * @param value the row
     */
    record Of(SheetRow value) implements SheetLine {

        @Override
        public Optional<SheetRow> row() {
            return Optional.of(value);
        }
    }

    /**
     * The head of a group.
     *
     * @param value what its rows have in common; empty for nothing
     * @param count how many rows it has
     * @param folded whether they are hidden
     */
    record Head(String value, int count, boolean folded) implements SheetLine {

        @Override
        public Optional<SheetRow> row() {
            return Optional.empty();
        }
    }
}
