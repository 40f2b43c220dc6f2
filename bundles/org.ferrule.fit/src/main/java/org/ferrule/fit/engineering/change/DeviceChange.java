/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.quantity.Dimension;

/** Devices with something in their papers changed. */
public final class DeviceChange {
    private DeviceChange() {
    }

    /**
     * The device with the outline of one section changed at both ends. An outline after use follows, unless it is
     * stated by itself.
     */
    public static Device of(Place.Shaft place, UnaryOperator<Contour> change) {
        List<ShaftSection> sections = new ArrayList<>(place.device().sections());
        sections.set(place.index(), changed(place.section(), change));
        return with(place.device(), sections, place.device().lumens(), place.device().claims(),
                place.device().takesWire());
    }

    private static ShaftSection changed(ShaftSection section, UnaryOperator<Contour> change) {
        Contour distal = change.apply(section.distal());
        Contour proximal = change.apply(section.proximal());
        boolean follows = section.afterUse() != AfterUse.STATED;
        return new ShaftSection(section.name(), section.from(), section.to(), distal, proximal,
                follows ? distal : section.distalAfter(), follows ? proximal : section.proximalAfter(),
                section.afterUse(), section.crossingProfile(), section.rigid(), section.source(), section.stiffness());
    }

    /** The outline with each of its printed figures changed; one that is not printed stays so. */
    public static Contour eachFigure(Contour contour, UnaryOperator<Dimension> change) {
        if (contour instanceof Contour.Round round) {
            return new Contour.Round(round.diameter().map(change));
        }
        if (contour instanceof Contour.Oval oval) {
            return new Contour.Oval(change.apply(oval.width()), change.apply(oval.height()));
        }
        return new Contour.Bundle(((Contour.Bundle) contour).members().stream()
                .map(m -> new Contour.Member(m.x(), m.y(), change.apply(m.diameter()))).toList());
    }

    /** The device with the inner diameter of one section of a lumen changed at both ends. */
    public static Device of(Place.Bore place, UnaryOperator<Optional<Dimension>> change) {
        List<LumenSection> sections = new ArrayList<>(place.lumen().sections());
        LumenSection section = place.section();
        sections.set(place.index(), new LumenSection(section.name(), section.from(), section.to(),
                change.apply(section.proximal()), change.apply(section.distal()), section.source()));
        Lumen lumen = place.lumen();
        Lumen changed = new Lumen(lumen.name(), lumen.use(), lumen.opening(), lumen.distalAt(), lumen.proximalAt(),
                lumen.proximalStated(),
                sections);
        List<Lumen> lumens = place.device().lumens().stream().map(l -> l.equals(lumen) ? changed : l).toList();
        return with(place.device(), place.device().sections(), lumens, place.device().claims(),
                place.device().takesWire());
    }

    /** The device without a statement of its papers. */
    public static Device without(Place.Statement place) {
        Device device = place.device();
        List<Claim> claims = new ArrayList<>(device.claims());
        place.claim().ifPresent(claims::remove);
        return with(device, device.sections(), device.lumens(), claims,
                place.claim().isPresent() ? device.takesWire() : Optional.empty());
    }

    private static Device with(Device device, List<ShaftSection> sections, List<Lumen> lumens, List<Claim> claims,
            Optional<Dimension> takesWire) {
        return new Device(device.id(), device.name(), device.kind(), device.size(), device.effectiveLength(),
                takesWire, sections, lumens, device.deploys(), claims, device.parts(), device.wireSource());
    }
}
