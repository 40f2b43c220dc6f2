/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Objects;

/**
 * The head of a row or a column: a device, and for outer devices one of its lumens.
 *
 * @param id of the device
 * @param name for people
 * @param kind in words
 * @param size its size designation; may be empty
 * @param lumen which lumen, when it has more than one that matters; may be empty
 * @param figure the figure that people look for, as printed: the inner diameter of an outer device, the largest
 *               profile of an inner one; may be empty
 * @param group the heading under which it stands; neighbours with the same one stand together; may be empty
 */
public record Head(String id, String name, String kind, String size, String lumen, String figure, String group) {

    public Head {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(group, "group");
    }

    /** Its name, or its id where it has none. */
    public String title() {
        return name.isEmpty() ? id : name;
    }
}
