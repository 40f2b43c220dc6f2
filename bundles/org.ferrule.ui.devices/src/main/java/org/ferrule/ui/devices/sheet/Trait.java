/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Optional;

import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.ModelPackage.Literals;

/** What rows are chosen by, and put together by. */
public enum Trait {

    /** The kind of device. */
    KIND("Kind") {
        @Override
        public String of(SheetRow row) {
            return row.text(Literals.DEVICE_PARTS__KIND);
        }
    },
    /** Who makes it. */
    MAKER("Maker") {
        @Override
        public String of(SheetRow row) {
            return row.text(Literals.DEVICE_PARTS__MAKER);
        }
    },
    /** The line that it belongs to. */
    LINE("Line") {
        @Override
        public String of(SheetRow row) {
            Optional<DeviceLine> line = row.line();
            return line.map(DeviceParts::getName).or(() -> line.map(DeviceParts::getId)).orElse("");
        }
    };

    private final String title;

    Trait(String title) {
        this.title = title;
    }

    /** Returns what it is called. */
    public String title() {
        return title;
    }

    /** Returns what a row has; empty for nothing. */
    public abstract String of(SheetRow row);

    /** Tells whether rows of a list can have it: lines belong to no line. */
    public boolean applies(EReference list) {
        return this != LINE || list == Literals.DEVICE_LIBRARY__DEVICES;
    }

    /** Returns the words for a value. */
    public static String words(String value) {
        return value.isEmpty() ? "(none stated)" : value;
    }
}
