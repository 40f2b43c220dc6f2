/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.proposal;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.IContentProposalProvider;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.fit.device.Device;
import org.ferrule.model.DeviceLibrary;

/** The devices that a document may refer to, as they stand now, and how it refers to them. */
public final class LibraryDevices {

    private final Supplier<List<String>> paths;
    private final Function<String, Optional<DeviceLibrary>> libraries;

    /**
     * Creates devices.
     *
     * @param paths the libraries that the document names, whenever it is asked
     * @param libraries finds the library at a path
     */
    public LibraryDevices(Supplier<List<String>> paths, Function<String, Optional<DeviceLibrary>> libraries) {
        this.paths = paths;
        this.libraries = libraries;
    }

    /** Returns all of them as they stand now. */
    public List<CataloguedDevice> all() {
        return Catalogue.of(paths.get().stream().flatMap(path -> libraries.apply(path).stream()
                .map(library -> new LibraryReader(path, library))).toList()).devices();
    }

    /** An id alone, unless two libraries share it. */
    public static String reference(CataloguedDevice device, List<CataloguedDevice> all) {
        long bearers = all.stream().filter(d -> d.device().id().equals(device.device().id())).count();
        return bearers == 1 ? device.device().id() : device.library() + "!" + device.device().id();
    }

    /** Returns the name of the device that is referred to; empty where there is none. */
    public String name(String reference) {
        int mark = reference.indexOf('!');
        String id = reference.substring(mark + 1);
        return paths.get().stream().filter(path -> mark < 0 || path.equals(reference.substring(0, mark)))
                .flatMap(path -> libraries.apply(path).stream()).flatMap(library -> library.getDevices().stream())
                .filter(device -> id.equals(device.getId()) && device.getName() != null).findFirst()
                .map(device -> device.getName()).orElse("");
    }

    /** Returns a reference with the name of its device behind it. */
    public String referenceAndName(String reference) {
        String name = name(reference);
        return name.isEmpty() ? reference : reference + "  \u2013  " + name;
    }

    /** Returns the name of a device in the place of its reference, where it has one. */
    public String nameOrReference(String reference) {
        String name = name(reference);
        return name.isEmpty() ? reference : name;
    }

    /** Proposes references; a text that is a reference already is no reason to offer only that one. */
    public IContentProposalProvider proposals(Predicate<Device> offered) {
        Supplier<List<CataloguedDevice>> devices = this::all;
        return (typed, position) -> {
            List<CataloguedDevice> all = devices.get();
            boolean complete = all.stream().anyMatch(device -> device.isCalled(typed.strip()));
            return all.stream().filter(device -> offered.test(device.device()))
                    .filter(device -> complete || DeviceProposal.matches(device, typed))
                    .map(device -> DeviceProposal.referred(device, reference(device, all)))
                    .toArray(IContentProposal[]::new);
        };
    }
}
