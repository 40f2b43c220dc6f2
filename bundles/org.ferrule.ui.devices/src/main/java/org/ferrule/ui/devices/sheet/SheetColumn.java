/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Comparator;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.model.DeviceParts;

/** A column of the table of devices. */
public interface SheetColumn {

    /** Returns the name by which preferences remember it. */
    String id();

    /** Returns what stands in its head. */
    String title();

    /** Returns what it shows, in a sentence; may be empty. */
    String explanation();

    /** Returns how wide it is at first, in characters. */
    int characters();

    /** Returns the text of a cell, as it was typed; empty for none. */
    String text(SheetRow row);

    /** Tells whether the value of a cell comes from the line. */
    boolean inherited(SheetRow row);

    /** Tells whether a cell is known already; else it takes a little longer when it is asked for the first time. */
    default boolean knows(SheetRow row) {
        return true;
    }

    /** Returns what a cell is sorted by; null goes last. */
    SortKey key(SheetRow row);

    /** Returns the attribute whose values are typed into its cells; nothing if they cannot be edited. */
    default Optional<EAttribute> attribute() {
        return Optional.empty();
    }

    /** Returns why a cell cannot be edited; nothing if it can. */
    Optional<String> locked(SheetRow row);

    /**
     * Returns the command that gives a device another value.
     *
     * @param value a value of the attribute, or null for none
     * @throws IllegalStateException if the cell cannot be edited
     */
    Command command(EditingDomain domain, DeviceParts device, Object value);

    /** Returns the order of rows by this column, cells without a value last either way. */
    default Comparator<SheetRow> order(boolean rising) {
        Comparator<SortKey> order = rising ? Comparator.naturalOrder() : Comparator.reverseOrder();
        return Comparator.comparing(this::key, Comparator.nullsLast(order));
    }
}
