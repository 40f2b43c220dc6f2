/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.setup;

import java.util.List;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.Field;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.edit.section.ObjectColumn;
import org.ferrule.ui.edit.section.ObjectsBlock;
import org.ferrule.ui.edit.section.OptionalBlock;
import org.ferrule.ui.edit.section.PartBlock;
import org.ferrule.ui.edit.section.PartSection;
import org.ferrule.ui.fit.proposal.LibraryDevices;
import org.ferrule.ui.fit.proposal.ReferencePickers;
import org.ferrule.ui.look.ModelLabels;

/** What else lies in the lumen and on the way: devices inside, an extension that is passed, bends. */
final class ConditionBlocks {

    private static final Predicate<Device> WIRES = device -> device.kind() == DeviceKind.GUIDEWIRE;
    private static final Predicate<Device> EXTENSIONS = device -> device.kind() == DeviceKind.GUIDE_EXTENSION;
    private static final int WIDE = 170;
    private static final int NARROW = 95;

    private final DocumentSession session;
    private final IManagedForm managed;
    private final PartSection section;
    private final LibraryDevices devices;
    private final ReferencePickers pickers;

    ConditionBlocks(DocumentSession session, IManagedForm managed, PartSection section, LibraryDevices devices,
            ReferencePickers pickers) {
        this.session = session;
        this.managed = managed;
        this.section = section;
        this.devices = devices;
        this.pickers = pickers;
    }

    void add() {
        section.add(inside());
        section.add(through());
        section.add(bends());
    }

    private PartBlock inside() {
        List<ObjectColumn> columns = List.of(new ObjectColumn("Device", Literals.OCCUPANT__DEVICE, WIDE,
                devices::nameOrReference),
                new ObjectColumn("Tip beyond", Literals.OCCUPANT__TIP_AHEAD, NARROW),
                new ObjectColumn("Used", Literals.OCCUPANT__USED, NARROW));
        return new ObjectsBlock(session, managed, section.client(),
                ModelLabels.feature(Literals.CONDITIONS__INSIDE), Literals.CONDITIONS__INSIDE, columns, form -> {
                    reference(form, Literals.OCCUPANT__DEVICE, device -> true);
                    reference(form, Literals.OCCUPANT__WIRE, WIRES);
                    explained(form.dimension(Literals.OCCUPANT__TIP_AHEAD), Literals.OCCUPANT__TIP_AHEAD);
                    explained(form.flag(Literals.OCCUPANT__USED), Literals.OCCUPANT__USED);
                }).picking("Device...", Literals.OCCUPANT__DEVICE,
                        () -> pickers.devices(List.of(), device -> true, false))
                .picking("Wire...", Literals.OCCUPANT__WIRE, () -> pickers.devices(List.of(), WIRES, false));
    }

    private PartBlock through() {
        return new OptionalBlock(session, managed, section.client(),
                ModelLabels.feature(Literals.CONDITIONS__THROUGH), Literals.CONDITIONS__THROUGH, form -> {
                    reference(form, Literals.THROUGH_EXTENSION__EXTENSION, EXTENSIONS);
                    explained(form.dimension(Literals.THROUGH_EXTENSION__PROTRUSION),
                            Literals.THROUGH_EXTENSION__PROTRUSION);
                });
    }

    private PartBlock bends() {
        List<ObjectColumn> columns = List.of(new ObjectColumn("Bend of the", Literals.BEND__WHERE, NARROW),
                new ObjectColumn("Radius", Literals.BEND__RADIUS, NARROW),
                new ObjectColumn("Degrees", Literals.BEND__ANGLE_DEGREES, NARROW));
        return new ObjectsBlock(session, managed, section.client(), ModelLabels.feature(Literals.CONDITIONS__BENDS),
                Literals.CONDITIONS__BENDS, columns, form -> {
                    explained(form.choice(Literals.BEND__WHERE), Literals.BEND__WHERE);
                    explained(form.dimension(Literals.BEND__RADIUS), Literals.BEND__RADIUS);
                    explained(form.text(Literals.BEND__ANGLE_DEGREES), Literals.BEND__ANGLE_DEGREES);
                    explained(form.dimension(Literals.BEND__VESSEL_DIAMETER), Literals.BEND__VESSEL_DIAMETER);
                });
    }

    private void reference(FieldForm form, EAttribute feature, Predicate<Device> offered) {
        explained(form.named(feature, devices::name).proposing(devices.proposals(offered)), feature);
    }

    private static void explained(Field field, EAttribute feature) {
        field.explained(ModelLabels.description(feature));
    }
}
