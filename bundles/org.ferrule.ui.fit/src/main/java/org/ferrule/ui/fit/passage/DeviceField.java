/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.jface.bindings.keys.KeyStroke;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.Device;
import org.ferrule.ui.fit.proposal.DeviceProposal;

/** A field in which a device is found by any words of its name, kind, size, maker or id. */
public final class DeviceField {

    private static final int POPUP_WIDTH = 380;
    private static final int POPUP_HEIGHT = 260;

    private final Text text;
    private final Predicate<Device> offered;
    private final Runnable changed;
    private List<CataloguedDevice> devices = List.of();
    private String reference = "";
    private boolean showing;

    /** Creates a field with its label; whenever another device is chosen, something is run. */
    public DeviceField(Composite parent, String label, Predicate<Device> offered, Runnable changed) {
        this.offered = offered;
        this.changed = changed;
        new Label(parent, SWT.NONE).setText(label);
        text = new Text(parent, SWT.SEARCH | SWT.ICON_CANCEL);
        text.setMessage("Type to find");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addModifyListener(event -> typed());
        addProposals();
    }

    private void addProposals() {
        KeyStroke all = KeyStroke.getInstance(SWT.MOD1, ' ');
        ContentProposalAdapter adapter = new ContentProposalAdapter(text, new TextContentAdapter(),
                (contents, position) -> proposals(contents), all, null);
        adapter.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
        adapter.setPopupSize(new Point(POPUP_WIDTH, POPUP_HEIGHT));
        adapter.addContentProposalListener((IContentProposal proposal) -> choose(((DeviceProposal) proposal).device()));
    }

    private IContentProposal[] proposals(String typed) {
        String words = reference.isEmpty() ? typed : "";
        return devices.stream().filter(device -> DeviceProposal.matches(device, words)).map(DeviceProposal::named)
                .toArray(IContentProposal[]::new);
    }

    private void choose(CataloguedDevice chosen) {
        reference = chosen.library() + "!" + chosen.device().id();
        changed.run();
    }

    /** What is typed names a device no longer, until one is chosen. */
    private void typed() {
        boolean other = !device().map(d -> d.device().name()).orElse("").equals(text.getText());
        if (!showing && !reference.isEmpty() && other) {
            reference = "";
            changed.run();
        }
    }

    /** Offers the devices of a catalogue. */
    public void offer(Catalogue catalogue) {
        devices = catalogue.devices().stream().filter(device -> offered.test(device.device())).toList();
        show(reference);
    }

    /** Shows the device of a reference; nothing if it is empty or unknown. */
    public void show(String shown) {
        showing = true;
        reference = shown;
        text.setText(device().map(found -> found.device().name()).orElse(""));
        showing = false;
    }

    /** Returns the reference of the device; empty if none is chosen. */
    public String reference() {
        return reference;
    }

    Optional<CataloguedDevice> device() {
        return devices.stream().filter(device -> device.isCalled(reference)).findFirst();
    }

    /** Returns the widget. */
    public Text control() {
        return text;
    }
}
