/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.ferrule.quantity.Dimension;

/**
 * An explicit statement of a maker's papers about partners of a device. It compares label with label, without
 * tolerance or required clearance, and holds only for what it states.
 *
 * @param type what it states
 * @param value the diameter it names; present for the two types that compare diameters
 * @param kinds the partner kinds it speaks of
 * @param sizes the partner size designations it speaks of
 * @param devices the partner ids it speaks of
 * @param wire the largest wire it speaks of; absent when it does not mention one
 * @param besideOthers whether it speaks of the device with others in the same lumen; if not, of the device alone
 * @param covers the phases it covers
 * @param source where it was read
 */
public record Claim(Type type, Optional<Dimension> value, Set<DeviceKind> kinds, List<String> sizes,
        List<String> devices, Optional<Dimension> wire, boolean besideOthers, Set<Phase> covers, SourceRef source) {

    /** What a claim states. */
    public enum Type {
        /** The device needs a lumen of at least this diameter. */
        MINIMUM_LUMEN,
        /** The lumen takes devices up to this diameter. */
        LARGEST_DEVICE,
        /** The partners named go with it. */
        COMPATIBLE,
        /** The partners named do not go with it. */
        NOT_COMPATIBLE
    }

    public Claim {
        Objects.requireNonNull(type, "type");
        kinds = Set.copyOf(kinds);
        sizes = List.copyOf(sizes);
        devices = List.copyOf(devices);
        covers = covers.isEmpty() ? Set.of(Phase.IN) : Set.copyOf(covers);
        Objects.requireNonNull(wire, "wire");
        Objects.requireNonNull(source, "source");
        if (comparesDiameters(type) && value.isEmpty()) {
            throw new IllegalArgumentException("a claim of type " + type + " needs a value");
        }
    }

    private static boolean comparesDiameters(Type type) {
        return type == Type.MINIMUM_LUMEN || type == Type.LARGEST_DEVICE;
    }

    /** Whether it names the partners that it speaks of; if not, only its "no" counts. */
    public boolean isScoped() {
        return !kinds.isEmpty() || !devices.isEmpty();
    }
}
