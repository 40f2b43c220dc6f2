/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.part.Shown;

/** A column of figures that parts of a device state, such as the largest of all diameters. */
final class FigureColumn implements SheetColumn {

    static final FigureColumn NOMINAL_DIAMETER = new FigureColumn("nominalDiameter", "Nominal diameter",
            "The nominal diameter of the balloon or the stent", "no balloon and no stent",
            Literals.BALLOON__DIAMETER, Places::nominalDiameter);
    static final FigureColumn NOMINAL_LENGTH = new FigureColumn("nominalLength", "Nominal length",
            "The nominal length of the balloon or the stent", "no balloon and no stent",
            Literals.BALLOON__LENGTH, Places::nominalLength);
    static final FigureColumn LARGEST = new FigureColumn("largestDiameter", "Largest diameter",
            "The largest outer diameter of the shaft: the crossing profile of a balloon or stent",
            "no section of the shaft", Literals.SHAFT_SECTION__OD, Places::largestDiameter);
    static final FigureColumn ENTRY = new FigureColumn("entryProfile", "Entry profile",
            "The outer diameter at the distal tip: of the first section", "no section of the shaft",
            Literals.SHAFT_SECTION__OD, Places::entryProfile);
    static final FigureColumn LUMEN = new FigureColumn("mainLumen", "Main lumen",
            "The least inner diameter of the first working lumen", "no working lumen with a section",
            Literals.LUMEN_SECTION__ID, Places::mainLumen);

    static final List<FigureColumn> ALL = List.of(NOMINAL_DIAMETER, NOMINAL_LENGTH, LARGEST, ENTRY, LUMEN);

    private static final int CHARACTERS = 13;

    private final String id;
    private final String title;
    private final String explanation;
    private final String missing;
    private final EAttribute feature;
    private final Function<Shown, Optional<Place>> finder;

    private FigureColumn(String id, String title, String explanation, String missing, EAttribute feature,
            Function<Shown, Optional<Place>> finder) {
        this.id = id;
        this.title = title;
        this.explanation = explanation;
        this.missing = missing;
        this.feature = feature;
        this.finder = finder;
    }

    Optional<Place> place(Shown device) {
        return finder.apply(device);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public String explanation() {
        return explanation;
    }

    @Override
    public int characters() {
        return CHARACTERS;
    }

    @Override
    public String text(SheetRow row) {
        return row.figure(this).text();
    }

    @Override
    public boolean inherited(SheetRow row) {
        return row.figure(this).inherited();
    }

    @Override
    public boolean knows(SheetRow row) {
        return row.knowsFigures();
    }

    @Override
    public SortKey key(SheetRow row) {
        return SortKey.of(row.figure(this).length());
    }

    @Override
    public Optional<EAttribute> attribute() {
        return Optional.of(feature);
    }

    @Override
    public Optional<String> locked(SheetRow row) {
        return row.figure(this).placed() ? Optional.empty()
                : Optional.of("It has " + missing + " that could state this: add one in the form");
    }

    @Override
    public Command command(EditingDomain domain, DeviceParts device, Object value) {
        return place(Shown.of(device))
                .orElseThrow(() -> new IllegalStateException(device.getId() + " has " + missing))
                .command(domain, value);
    }
}
