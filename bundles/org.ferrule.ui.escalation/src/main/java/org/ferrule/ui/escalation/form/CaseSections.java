/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.edit.section.ObjectColumn;
import org.ferrule.ui.edit.section.ObjectsBlock;
import org.ferrule.ui.edit.section.OptionalBlock;
import org.ferrule.ui.edit.section.PartSection;
import org.ferrule.ui.edit.section.TextListBlock;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.fit.proposal.LibraryDevices;
import org.ferrule.ui.fit.proposal.ReferencePickers;
import org.ferrule.ui.look.Colours;

/** The sections of the page of a case. */
final class CaseSections {

    private static final int COLUMN = 100;

    /** Adds a section to the page. */
    @FunctionalInterface
    interface Adding {
        PartSection section(Composite column, String title, EReference part, Consumer<FieldForm> fields);
    }

    private final LivePlan live;
    private final IManagedForm managed;
    private final Adding adding;
    private final LibraryDevices devices;
    private final ReferencePickers pickers;

    CaseSections(LivePlan live, IManagedForm managed, Shell shell, Adding adding) {
        this.live = live;
        this.managed = managed;
        this.adding = adding;
        devices = new LibraryDevices(
                () -> live.file().map(CaseDocument::getLibraries).map(List::copyOf).orElse(List.of()),
                live.documents()::library);
        pickers = new ReferencePickers(devices, live.session().file(), shell);
    }

    void addSystem(Composite column) {
        PartSection system = adding.section(column, "In place", Literals.CASE_DOCUMENT__SYSTEM, form -> {
            device(form, Literals.SYSTEM_IN_PLACE__SHEATH, DeviceKind.INTRODUCER_SHEATH);
            device(form, Literals.SYSTEM_IN_PLACE__VALVE, DeviceKind.HAEMOSTASIS_VALVE);
            device(form, Literals.SYSTEM_IN_PLACE__GUIDE, DeviceKind.GUIDE_CATHETER);
            device(form, Literals.SYSTEM_IN_PLACE__MICROCATHETER, DeviceKind.MICROCATHETER);
            device(form, Literals.SYSTEM_IN_PLACE__MAIN_WIRE, DeviceKind.GUIDEWIRE);
            device(form, Literals.SYSTEM_IN_PLACE__SECOND_WIRE, DeviceKind.GUIDEWIRE);
            device(form, Literals.SYSTEM_IN_PLACE__ANCHOR, DeviceKind.BALLOON_CATHETER);
        });
        system.add(new OptionalBlock(live.session(), managed, system.client(), "Guide extension",
                Literals.SYSTEM_IN_PLACE__EXTENSION, form -> {
                    device(form, Literals.THROUGH_EXTENSION__EXTENSION, DeviceKind.GUIDE_EXTENSION);
                    form.dimension(Literals.THROUGH_EXTENSION__PROTRUSION);
                }));
        adding.section(column, "To be delivered", null,
                form -> form.named(Literals.CASE_DOCUMENT__DELIVER, devices::name)
                        .proposing(devices.proposals(device -> true))
                        .explained("Id of the device that has to arrive; Ctrl+Space proposes"));
        adding.section(column, "Access", Literals.CASE_DOCUMENT__ACCESS, form -> {
            form.text(Literals.ACCESS__SITE);
            form.dimension(Literals.ACCESS__VESSEL);
        });
    }

    private void device(FieldForm form, EAttribute feature, DeviceKind kind) {
        form.named(feature, devices::name).proposing(devices.proposals(device -> device.kind() == kind))
                .explained("Id of the " + kind.word() + "; Ctrl+Space proposes those of the libraries");
    }

    void addWay(Composite column) {
        adding.section(column, "Lesion", Literals.CASE_DOCUMENT__LESION, form -> {
            form.text(Literals.LESION__NAME);
            form.dimension(Literals.LESION__AT);
            form.dimension(Literals.LESION__LENGTH);
            form.dimension(Literals.LESION__DIAMETER);
            form.dimension(Literals.LESION__REFERENCE);
        });
        adding.section(column, "Side branch", Literals.CASE_DOCUMENT__BRANCH, form -> {
            form.text(Literals.SIDE_BRANCH__NAME);
            form.dimension(Literals.SIDE_BRANCH__AT);
            form.dimension(Literals.SIDE_BRANCH__DIAMETER);
            form.dimension(Literals.SIDE_BRANCH__DEPTH);
        });
        PartSection path = adding.section(column, "Way to the lesion", Literals.CASE_DOCUMENT__PATH,
                form -> form.text(Literals.VESSEL_PATH__NAME));
        path.add(new ObjectsBlock(live.session(), managed, path.client(), "", Literals.VESSEL_PATH__SEGMENTS,
                List.of(new ObjectColumn("Segment", Literals.VESSEL_SEGMENT__NAME, COLUMN),
                        new ObjectColumn("Length", Literals.VESSEL_SEGMENT__LENGTH, COLUMN),
                        new ObjectColumn("Diameter", Literals.VESSEL_SEGMENT__DIAMETER, COLUMN)),
                form -> {
                    form.text(Literals.VESSEL_SEGMENT__NAME);
                    form.dimension(Literals.VESSEL_SEGMENT__LENGTH);
                    form.dimension(Literals.VESSEL_SEGMENT__DIAMETER);
                    form.dimension(Literals.VESSEL_SEGMENT__BEND_RADIUS);
                    form.text(Literals.VESSEL_SEGMENT__BEND_ANGLE_DEGREES);
                }));
    }

    void addFile(Composite column) {
        PartSection file = adding.section(column, "Case and documents", null, form -> {
            form.text(Literals.DOCUMENT__TITLE).explained("Nothing that tells who the patient is");
            form.text(Literals.CASE_DOCUMENT__DAY).explained("Year-month-day, such as 2026-03-09");
            form.text(Literals.CASE_DOCUMENT__RULES);
            form.text(Literals.CASE_DOCUMENT__TECHNIQUES);
            form.text(Literals.CASE_DOCUMENT__SHELF);
        });
        pick(file, "Choose rule set...", Literals.CASE_DOCUMENT__RULES, DocumentKind.RULES);
        pick(file, "Choose techniques...", Literals.CASE_DOCUMENT__TECHNIQUES, DocumentKind.TECHNIQUES);
        pick(file, "Choose shelf...", Literals.CASE_DOCUMENT__SHELF, DocumentKind.SHELF);
        file.add(new TextListBlock(live.session(), managed.getToolkit(), file.client(), "Libraries",
                Literals.CASE_DOCUMENT__LIBRARIES, there -> pickers.documents(DocumentKind.DEVICES, there, true)));
    }

    private void pick(PartSection section, String label, EAttribute feature, DocumentKind kind) {
        section.addPicking(label, feature, () -> pickers.documents(kind, List.of(), false));
    }

    void addFacts(Composite column) {
        PartSection facts = adding.section(column, "What holds", null, form -> {
        });
        facts.add(new FactsBlock(live, managed, facts.client()));
    }

    void addAim(Composite column) {
        PartSection aim = adding.section(column, "Aim and budgets", Literals.CASE_DOCUMENT__AIM, form -> {
            form.choice(Literals.CASE_AIM__OBJECTIVE);
            form.text(Literals.CASE_AIM__STOPPING_COST)
                    .explained("What it costs to end without success, in the unit of what is to be spared");
            form.flag(Literals.CASE_AIM__TIERS_FIRST);
            form.flag(Literals.CASE_AIM__ONE_NEW_RISK_ASTEP);
            form.text(Literals.CASE_AIM__SAME_AXIS_DISCOUNT);
            form.flag(Literals.CASE_AIM__BUDGETS_LIMIT);
        });
        aim.add(new OptionalBlock(live.session(), managed, aim.client(), "Budgets", Literals.CASE_AIM__BUDGETS,
                CaseSections::costs));
        adding.section(column, "Used before the log began", Literals.CASE_DOCUMENT__SPENT, CaseSections::costs);
    }

    private static void costs(FieldForm form) {
        Stream.of(Literals.COSTED__MINUTES, Literals.COSTED__CONTRAST_ML, Literals.COSTED__DOSE_MGY,
                Literals.COSTED__MONEY).forEach(form::text);
    }

    void addFigures(Composite column) {
        PartSection patient = adding.section(column, "Figures for limits", Literals.CASE_DOCUMENT__PATIENT, form -> {
            form.text(Literals.PATIENT_FIGURES__AGE);
            form.text(Literals.PATIENT_FIGURES__WEIGHT);
            form.text(Literals.PATIENT_FIGURES__CREATININE);
            form.choice(Literals.PATIENT_FIGURES__SEX);
        });
        Label warning = managed.getToolkit().createLabel(patient.client(),
                "\u25b2 No name, date of birth, number or anything else that tells who the patient is belongs in this "
                        + "file.",
                SWT.WRAP);
        warning.setForeground(Colours.error());
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(warning);
        adding.section(column, "What was seen of the lesion", Literals.CASE_DOCUMENT__MEASURES, form -> {
            form.flag(Literals.LESION_MEASURES__BLUNT_STUMP);
            form.flag(Literals.LESION_MEASURES__CALCIFICATION);
            form.text(Literals.LESION_MEASURES__BEND_DEGREES);
            form.flag(Literals.LESION_MEASURES__FAILED_BEFORE);
            form.text(Literals.LESION_MEASURES__OCCLUSION_MONTHS);
            form.text(Literals.LESION_MEASURES__CALCIUM_DEGREES);
            form.dimension(Literals.LESION_MEASURES__CALCIUM_THICKNESS);
            form.dimension(Literals.LESION_MEASURES__CALCIUM_LENGTH);
            form.choices(Literals.LESION_MEASURES__TRAITS);
        });
    }

    void addLog(Composite column) {
        PartSection log = adding.section(column, "Log", null, form -> {
        });
        log.add(new ObjectsBlock(live.session(), managed, log.client(), "", Literals.CASE_DOCUMENT__LOG,
                List.of(new ObjectColumn("Step", Literals.LOGGED_ATTEMPT__MOVE, COLUMN * 2,
                        id -> moves(null).getOrDefault(id, id)),
                        new ObjectColumn("How it ended", Literals.LOGGED_ATTEMPT__OUTCOME, COLUMN),
                        new ObjectColumn("Minutes", Literals.COSTED__MINUTES, COLUMN / 2)),
                form -> {
                    form.reference(Literals.LOGGED_ATTEMPT__MOVE, this::moves);
                    form.choice(Literals.LOGGED_ATTEMPT__OUTCOME);
                    costs(form);
                    form.text(Literals.LOGGED_ATTEMPT__REMARK).explained("Nothing that tells who the patient is");
                }));
        PartSection boxes = adding.section(column, "Boxes opened", null, form -> {
        });
        boxes.add(new UnitsBlock(live, managed, boxes.client()));
    }

    private Map<String, String> moves(EObject attempt) {
        Map<String, String> names = new LinkedHashMap<>();
        live.file().flatMap(live.documents()::techniques).ifPresent(library -> {
            library.getSetups().forEach(setup -> names.put(setup.getId(), setup.getName()));
            library.getTechniques().forEach(technique -> names.put(technique.getId(), technique.getName()));
        });
        names.remove(null);
        return names;
    }
}
