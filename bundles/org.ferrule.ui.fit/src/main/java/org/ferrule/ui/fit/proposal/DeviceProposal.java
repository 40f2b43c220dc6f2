/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.proposal;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.fieldassist.ContentProposal;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.Device;

/** A device on offer while its name, or its reference, is typed. */
public final class DeviceProposal extends ContentProposal {

    private final CataloguedDevice device;

    private DeviceProposal(CataloguedDevice device, String content, String label) {
        super(content, label, null);
        this.device = device;
    }

    /** Offers a device by its name, and says what tells it from others of that name; the field keeps its reference. */
    public static DeviceProposal named(CataloguedDevice catalogued) {
        Device device = catalogued.device();
        String more = Stream.of(device.kind().word(), device.size(), catalogued.maker())
                .filter(words -> !words.isEmpty()).collect(Collectors.joining(", "));
        return new DeviceProposal(catalogued, device.name(), device.name() + "  \u2013  " + more);
    }

    /** Offers a device by the text that refers to it. */
    public static DeviceProposal referred(CataloguedDevice device, String reference) {
        return new DeviceProposal(device, reference, label(device));
    }

    /** Returns the device. */
    public CataloguedDevice device() {
        return device;
    }

    /** Returns what tells a device from others: its name, kind, size and id. */
    public static String label(CataloguedDevice catalogued) {
        Device device = catalogued.device();
        return Stream.of(device.name(), device.kind().word(), device.size(), device.id())
                .filter(text -> !text.isEmpty()).reduce((a, b) -> a + "  \u2013  " + b).orElse("");
    }

    /** Tells whether all the words that are typed stand in the name, kind, size, maker, model or id of a device. */
    public static boolean matches(CataloguedDevice device, String typed) {
        String all = String.join(" ", device.device().name(), device.device().kind().word(), device.device().size(),
                device.maker(), device.model(), device.device().id()).toLowerCase(Locale.ROOT);
        String words = typed.toLowerCase(Locale.ROOT).strip();
        return words.isEmpty() || List.of(words.split("\\s+")).stream().allMatch(all::contains);
    }
}
