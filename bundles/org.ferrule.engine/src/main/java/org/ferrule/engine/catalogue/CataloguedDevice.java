/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import org.ferrule.fit.device.Device;

/**
 * A device of a library, with what groups and sorts it.
 *
 * @param library relative path of its library
 * @param device the record
 * @param maker may be empty
 * @param line the name of its line, or its id where it has no name; may be empty
 * @param model catalogue code, may be empty
 */
public record CataloguedDevice(String library, Device device, String maker, String line, String model) {

    /** Its id, with the library when that is asked for: {@code library!id}. */
    public boolean isCalled(String reference) {
        return reference.equals(device.id()) || reference.equals(key());
    }

    /** By which it is known again after its figures were edited: {@code library!id}. */
    public String key() {
        return library + "!" + device.id();
    }
}
