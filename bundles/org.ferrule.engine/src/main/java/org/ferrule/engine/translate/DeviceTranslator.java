/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.model.ClaimType;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.DeviceResolution;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Copies devices of the model into immutable records of the kernel. Parts that cannot be used (a section without
 * stations) are left out, so that the kernel finds the stretch unknown; validation reports them at their place.
 */
public final class DeviceTranslator {
    private final SourceIndex sources;

    /** A translator for the devices of one library. */
    public DeviceTranslator(DeviceLibrary library) {
        this.sources = new SourceIndex(library);
    }

    /** The record of a device, with everything that it inherits from its line. */
    public Device translate(org.ferrule.model.Device device) {
        ResolvedDevice resolved = DeviceResolution.resolve(device);
        DeviceParts parts = resolved.device();
        Optional<Dimension> effectiveLength = Optional.ofNullable(parts.getEffectiveLength());
        List<ShaftSection> sections = new SectionTranslator(parts, sources).translate();
        Length wholeLength = wholeLength(effectiveLength, sections);
        List<Lumen> lumens = parts.getLumens().isEmpty()
                ? UndescribedLumen.of(Words.kind(parts.getKind()), parts.getTakesWire() != null, wholeLength)
                : new LumenTranslator(wholeLength, sources).translate(parts.getLumens());
        return new Device(text(parts.getId()), name(parts), Words.kind(parts.getKind()), text(parts.getSize()),
                effectiveLength, Optional.ofNullable(parts.getTakesWire()), sections, lumens,
                parts.getStent() != null, parts.getClaims().stream().filter(DeviceTranslator::isUsable)
                        .map(this::claim).toList(),
                PartsTranslator.translate(parts), wireSource(resolved));
    }

    /** What a device inherits speaks by the source of its line, even where the device names another. */
    private SourceRef wireSource(ResolvedDevice resolved) {
        DeviceParts device = resolved.device();
        if (device.getTakesWire() == null) {
            return SourceRef.NONE;
        }
        boolean inherited = resolved.isInherited(device, Literals.DEVICE_PARTS__TAKES_WIRE);
        return sources.of(inherited ? resolved.line().orElseThrow() : device);
    }

    private static String name(DeviceParts parts) {
        return parts.getName() == null ? text(parts.getId()) : parts.getName();
    }

    private static Length wholeLength(Optional<Dimension> effectiveLength, List<ShaftSection> sections) {
        return effectiveLength.filter(Dimension::readable).map(Dimension::label)
                .orElseGet(() -> sections.stream().map(ShaftSection::to).reduce(Length.ZERO, Length::max));
    }

    private static boolean isUsable(org.ferrule.model.Claim claim) {
        boolean compares = claim.getType() == ClaimType.MINIMUM_LUMEN || claim.getType() == ClaimType.LARGEST_DEVICE;
        return claim.isSetType() && (!compares || claim.getValue() != null);
    }

    private Claim claim(org.ferrule.model.Claim claim) {
        return new Claim(type(claim.getType()), Optional.ofNullable(claim.getValue()), Words.kinds(claim.getKinds()),
                claim.getSizes(), claim.getDevices(), Optional.ofNullable(claim.getWire()),
                !claim.isAlone(),
                Words.phases(claim.getCovers()), sources.of(claim));
    }

    private static Claim.Type type(ClaimType type) {
        return switch (type) {
            case MINIMUM_LUMEN -> Claim.Type.MINIMUM_LUMEN;
            case LARGEST_DEVICE -> Claim.Type.LARGEST_DEVICE;
            case COMPATIBLE -> Claim.Type.COMPATIBLE;
            case NOT_COMPATIBLE -> Claim.Type.NOT_COMPATIBLE;
        };
    }

    static String text(String value) {
        return value == null ? "" : value;
    }
}
