/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import java.util.List;

/** A sheet cannot be read as a shelf. */
public class SheetException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<SheetFault> faults;

    /**
     * Takes all that is wrong.
     *
     * @param faults at least one
     */
    public SheetException(List<SheetFault> faults) {
        super(String.join("; ", faults.stream().map(SheetFault::toString).toList()));
        this.faults = List.copyOf(faults);
    }

    /** Returns all that is wrong, in the order of the sheet. */
    public List<SheetFault> faults() {
        return faults;
    }
}
