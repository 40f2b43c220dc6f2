/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.DeviceKind;

import picocli.CommandLine.Option;

/** The options that name the partners of a device: one by one, or all of a kind and a size. */
public final class PartnerOptions {

    @Option(names = "--partner", paramLabel = "ID[#LUMEN]", description = "A partner; may be given several times.")
    private List<String> partners = new ArrayList<>();

    @Option(names = "--kind", paramLabel = "KIND", description = "All partners of this kind, such as \"guide catheter\".")
    private String kind;

    @Option(names = "--size", paramLabel = "SIZE", description = "Of --kind, only those of this size designation, such as \"6 Fr\".")
    private String size;

    /** The partners, by reference. */
    public List<String> read(Catalogue catalogue) {
        List<String> found = new ArrayList<>(partners);
        if (kind != null) {
            DeviceKind wanted = kind();
            catalogue.devices().stream().filter(d -> d.device().kind() == wanted)
                    .filter(d -> size == null || d.device().size().equals(size)).map(PartnerOptions::reference)
                    .forEach(found::add);
        }
        if (found.isEmpty()) {
            throw new CommandLineException(kind == null ? "say which partners with --partner or --kind"
                    : "there is no " + kind + (size == null ? "" : " of size " + size) + " in the libraries");
        }
        return found;
    }

    private DeviceKind kind() {
        try {
            return DeviceKind.ofWord(kind);
        } catch (IllegalArgumentException e) {
            throw new CommandLineException("--kind: " + e.getMessage());
        }
    }

    private static String reference(CataloguedDevice device) {
        return device.library() + "!" + device.device().id();
    }
}
