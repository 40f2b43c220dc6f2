/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.model.DeviceParts;

/**
 * A column of what follows from something else, and cannot be typed.
 *
 * @param id the name by which it is remembered
 * @param title what stands in its head
 * @param explanation what it shows
 * @param characters how wide it is at first
 * @param words the text of a cell
 * @param keys what a cell is sorted by
 * @param reason why it cannot be typed
 */
record InfoColumn(String id, String title, String explanation, int characters, Function<SheetRow, String> words,
        Function<SheetRow, SortKey> keys, String reason) implements SheetColumn {

    @Override
    public String text(SheetRow row) {
        return words.apply(row);
    }

    @Override
    public boolean inherited(SheetRow row) {
        return false;
    }

    @Override
    public SortKey key(SheetRow row) {
        return keys.apply(row);
    }

    @Override
    public Optional<String> locked(SheetRow row) {
        return Optional.of(reason);
    }

    @Override
    public Command command(EditingDomain domain, DeviceParts device, Object value) {
        throw new IllegalStateException(title + " cannot be typed");
    }
}
