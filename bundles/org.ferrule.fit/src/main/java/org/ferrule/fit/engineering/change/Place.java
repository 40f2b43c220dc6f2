/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.quantity.Dimension;

/** Where in the papers of a device something is printed that a verdict may rest on. */
public sealed interface Place {

    /** The device whose papers these are. */
    Device device();

    /** What it is the dimension of, in the words of the papers: the name of a section, or of a lumen. */
    String name();

    /** The figures that are printed there, without those that are missing. */
    List<Dimension> printed();

    /** Where they were read. */
    SourceRef source();

    /** Whether a figure is missing or cannot be read. */
    default boolean isIncomplete() {
        return printed().isEmpty() || !printed().stream().allMatch(Dimension::readable);
    }

    /**
     * The outline of a section of a shaft.
     *
     * @param index of the section in the device's list
     */
    record Shaft(Device device, int index) implements Place {
        public Shaft {
            Objects.checkIndex(index, device.sections().size());
        }

        /** The section. */
        public ShaftSection section() {
            return device.sections().get(index);
        }

        @Override
        public String name() {
            return section().name();
        }

        @Override
        public List<Dimension> printed() {
            return Stream.of(section().distal(), section().proximal()).flatMap(Shaft::dimensions).distinct().toList();
        }

        private static Stream<Dimension> dimensions(Contour contour) {
            if (contour instanceof Contour.Round round) {
                return round.diameter().stream();
            }
            return contour instanceof Contour.Oval oval ? Stream.of(oval.width(), oval.height())
                    : ((Contour.Bundle) contour).members().stream().map(Contour.Member::diameter);
        }

        @Override
        public SourceRef source() {
            return section().source();
        }

        @Override
        public boolean isIncomplete() {
            return Place.super.isIncomplete() || Stream.of(section().distal(), section().proximal())
                    .anyMatch(c -> c instanceof Contour.Round round && round.diameter().isEmpty());
        }

        /** The class of figures that its diameters belong to. */
        public FigureClass figureClass() {
            if (section().crossingProfile()) {
                return FigureClass.CROSSING_PROFILE;
            }
            return device.kind() == DeviceKind.GUIDEWIRE ? FigureClass.WIRE_DIAMETER : FigureClass.OUTER_DIAMETER;
        }
    }

    /**
     * The inner diameter of a section of a lumen.
     *
     * @param lumen of the device
     * @param index of the section in the lumen's list
     */
    record Bore(Device device, Lumen lumen, int index) implements Place {
        public Bore {
            Objects.checkIndex(index, lumen.sections().size());
        }

        /** The section. */
        public LumenSection section() {
            return lumen.sections().get(index);
        }

        @Override
        public String name() {
            return section().name().isEmpty() ? lumen.name() : section().name();
        }

        @Override
        public List<Dimension> printed() {
            return Stream.of(section().proximal(), section().distal()).flatMap(Optional::stream).distinct().toList();
        }

        @Override
        public SourceRef source() {
            return section().source();
        }

        @Override
        public boolean isIncomplete() {
            return Place.super.isIncomplete() || section().proximal().isEmpty() || section().distal().isEmpty();
        }
    }

    /** The wire that a device runs over, where it lies beside the shaft. */
    record Wire(Device device) implements Place {
        @Override
        public String name() {
            return "";
        }

        @Override
        public List<Dimension> printed() {
            return device.takesWire().stream().toList();
        }

        @Override
        public SourceRef source() {
            return device.wireSource();
        }
    }

    /**
     * A statement about partners.
     *
     * @param claim of the device; absent for its "takes a wire of"
     */
    record Statement(Device device, Optional<Claim> claim) implements Place {
        public Statement {
            Objects.requireNonNull(claim, "claim");
        }

        @Override
        public String name() {
            return "";
        }

        @Override
        public List<Dimension> printed() {
            return claim.flatMap(Claim::value).or(() -> claim.isEmpty() ? device.takesWire() : Optional.empty())
                    .stream().toList();
        }

        @Override
        public SourceRef source() {
            return claim.map(Claim::source).orElse(device.wireSource());
        }
    }
}
