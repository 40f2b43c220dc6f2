/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.util.Objects;

/**
 * A box that was opened in a closed case.
 *
 * @param device id of the device
 * @param item id of the item of the shelf
 * @param name of the item
 * @param lot empty where none was noted
 * @param expiry when it would have expired, as ISO 8601 writes it; empty where that is not known
 */
public record UsedDevice(String device, String item, String name, String lot, String expiry) {
    public UsedDevice {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(lot, "lot");
        Objects.requireNonNull(expiry, "expiry");
    }
}
