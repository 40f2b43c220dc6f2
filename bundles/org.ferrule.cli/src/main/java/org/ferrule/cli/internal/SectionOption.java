/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.size.MovableSection;
import org.ferrule.fit.passage.Direction;

import picocli.CommandLine.Option;

/** The options that name a section of a device: of its shaft, or of one of its lumens. */
public final class SectionOption {

    @Option(names = "--device", required = true, paramLabel = "ID[#LUMEN]", description = "The device whose section is asked about; with a lumen, a section of that lumen.")
    private String device;

    @Option(names = "--section", paramLabel = "NAME", description = "The section, by its name or by its number from the tip (of a lumen from its proximal entry). May be left out where there is only one.")
    private String section;

    /** Whether a section of a lumen is named: then partners lie inside. */
    public boolean isBore() {
        return LumenReference.parse(device).lumen().isPresent();
    }

    /** How the device is referred to. */
    public String reference() {
        return device;
    }

    /** The section. */
    public MovableSection read(Catalogue catalogue, Direction direction) {
        LumenReference reference = LumenReference.parse(device);
        Device found = catalogue.device(reference.device()).device();
        if (!isBore()) {
            List<Place.Shaft> places = IntStream.range(0, found.sections().size())
                    .mapToObj(i -> new Place.Shaft(found, i)).toList();
            return movable(() -> MovableSection.of(pick(places)));
        }
        Lumen lumen = reference.lumen(found, direction);
        return MovableSection.of(pick(IntStream.range(0, lumen.sections().size())
                .mapToObj(i -> new Place.Bore(found, lumen, i)).toList()));
    }

    private static MovableSection movable(Supplier<MovableSection> section) {
        try {
            return section.get();
        } catch (IllegalArgumentException e) {
            throw new CommandLineException(e.getMessage());
        }
    }

    private <P extends Place> P pick(List<P> places) {
        List<P> named = places.stream().filter(p -> section == null || p.name().equals(section)).toList();
        if (named.size() == 1) {
            return named.get(0);
        }
        Optional<P> numbered = named.isEmpty() && section.matches("[0-9]{1,4}") ? at(places) : Optional.empty();
        return numbered.orElseThrow(() -> new CommandLineException("--section "
                + (section == null ? "is needed"
                        : "\"" + section + "\" names " + (named.isEmpty() ? "none" : "several"))
                + "; the sections of " + device + " are " + list(places)));
    }

    private <P extends Place> Optional<P> at(List<P> places) {
        int number = Integer.parseInt(section);
        return number >= 1 && number <= places.size() ? Optional.of(places.get(number - 1)) : Optional.empty();
    }

    private static String list(List<? extends Place> places) {
        return IntStream.range(0, places.size()).mapToObj(i -> (i + 1) + " \"" + places.get(i).name() + "\"")
                .collect(Collectors.joining(", "));
    }
}
