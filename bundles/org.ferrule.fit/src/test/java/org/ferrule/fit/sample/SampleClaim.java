/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;

/** A claim in the making. */
public final class SampleClaim {
    private final Claim.Type type;
    private final Optional<Dimension> value;
    private Set<DeviceKind> kinds = Set.of();
    private List<String> sizes = List.of();
    private List<String> devices = List.of();
    private Optional<Dimension> wire = Optional.empty();
    private Set<Phase> covers = Set.of();
    private boolean besideOthers;

    private SampleClaim(Claim.Type type, Optional<Dimension> value) {
        this.type = type;
        this.value = value;
    }

    public static SampleClaim minimumLumen(String value) {
        return new SampleClaim(Claim.Type.MINIMUM_LUMEN, Texts.printed(value));
    }

    public static SampleClaim largestDevice(String value) {
        return new SampleClaim(Claim.Type.LARGEST_DEVICE, Texts.printed(value));
    }

    public static SampleClaim compatible() {
        return new SampleClaim(Claim.Type.COMPATIBLE, Optional.empty());
    }

    public static SampleClaim notCompatible() {
        return new SampleClaim(Claim.Type.NOT_COMPATIBLE, Optional.empty());
    }

    public SampleClaim kinds(DeviceKind... partners) {
        kinds = Set.of(partners);
        return this;
    }

    public SampleClaim sizes(String... designations) {
        sizes = List.of(designations);
        return this;
    }

    public SampleClaim devices(String... ids) {
        devices = List.of(ids);
        return this;
    }

    public SampleClaim wire(String text) {
        wire = Texts.printed(text);
        return this;
    }

    public SampleClaim covers(Phase... phases) {
        covers = Set.of(phases);
        return this;
    }

    public SampleClaim besideOthers() {
        besideOthers = true;
        return this;
    }

    public Claim claim() {
        return new Claim(type, value, kinds, sizes, devices, wire, besideOthers, covers,
                new SourceRef("instructions", "3", "7"));
    }
}
