/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShaftSection;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.PartForm;
import org.ferrule.ui.devices.part.PartLayout;
import org.ferrule.ui.devices.part.PartList;
import org.ferrule.ui.devices.part.PartView;
import org.ferrule.ui.devices.part.Shown;

/** The form of one device or line, on tabs. */
final class DeviceDetail implements PartView {

    private final CTabFolder folder;
    private final DetailTab identity;
    private final DetailTab shaft;
    private final List<DetailTab> tabs;
    private Consumer<String> sectionListener = name -> {
    };
    private PartList sections;
    private Shown shown;

    /**
     * Creates a form that shows nothing yet.
     *
     * @param type the class of devices, or of lines
     */
    DeviceDetail(EditContext context, Composite parent, EClass type) {
        folder = new CTabFolder(parent, SWT.TOP | SWT.BORDER | SWT.FLAT);
        context.toolkit().adapt(folder);
        identity = new DetailTab(context, folder, "Identity", List.of(), (c, body) -> form(c, body, type, List.of()));
        shaft = new DetailTab(context, folder, "Shaft", List.of(PartLayout.SECTIONS), this::sections);
        tabs = List.of(identity, shaft, list(context, "Lumens", PartLayout.LUMENS),
                new DetailTab(context, folder, "Working parts", PartLayout.WORKING_PARTS,
                        (c, body) -> form(c, body, Literals.ELEMENT, PartLayout.WORKING_PARTS)),
                list(context, "Markers", PartLayout.MARKERS), list(context, "Claims", PartLayout.CLAIMS));
        folder.setSelection(0);
        folder.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> looked()));
    }

    private DetailTab list(EditContext context, String title, PartLayout layout) {
        return new DetailTab(context, folder, title, List.of(layout),
                (c, body) -> PartList.stacked(c, body, layout));
    }

    private static PartView form(EditContext context, Composite body, EClass type, List<PartLayout> layouts) {
        PartForm form = new PartForm(context, body, type, layouts);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(form.control());
        return form;
    }

    private PartView sections(EditContext context, Composite body) {
        sections = PartList.stacked(context, body, PartLayout.SECTIONS);
        sections.onSelect(this::tellSection);
        return sections;
    }

    private void looked() {
        tabs.stream().filter(tab -> tab.is(folder.getSelection())).forEach(DetailTab::update);
        tellSection();
    }

    /** A section is selected only as long as the user sees that. */
    private void tellSection() {
        boolean seen = sections != null && shaft.is(folder.getSelection());
        sectionListener.accept(seen ? sections.selected().map(DeviceDetail::name).orElse(null) : null);
    }

    private static String name(Shown section) {
        return ((ShaftSection) section.complete()).getName();
    }

    /** Sets what is done when another section of the shaft is selected: it gets the section's name, or null. */
    void onSection(Consumer<String> action) {
        sectionListener = action;
    }

    /** Shows the section of the shaft with the name. */
    void openSection(String name) {
        shaft.open();
        sections.select(name);
    }

    @Override
    public void show(Shown device) {
        shown = device;
        tabs.forEach(tab -> tab.show(device));
        tellSection();
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        if (shown == null || !EcoreUtil.isAncestor(shown.stater(), object)) {
            return false;
        }
        EStructuralFeature part = object == shown.stater() ? feature : partHolding(object);
        DetailTab tab = tabs.stream().filter(t -> t.shows(part)).findFirst().orElse(identity);
        boolean found = tab.open().reveal(object, feature);
        tellSection();
        return found;
    }

    /** The feature of the device whose part the object is, or is a part of. */
    private EStructuralFeature partHolding(EObject object) {
        EObject part = object;
        while (part.eContainer() != shown.stater()) {
            part = part.eContainer();
        }
        return part.eContainingFeature();
    }
}
