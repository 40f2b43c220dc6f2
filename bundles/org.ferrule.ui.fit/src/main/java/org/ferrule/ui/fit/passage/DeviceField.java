/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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

    private static final String UNNAMED = "\u201c%s\u201d is no device yet. Choose one of the list that opens while you "
            + "type; Ctrl+Space shows all of them.";
    private static final int POPUP_WIDTH = 560;
    private static final int POPUP_HEIGHT = 260;
    /** No list flickers up for words that are typed and chosen quickly. */
    private static final int DELAY_MS = 150;
    /** The list opens at any letter or digit, also of names that are not English. */
    private static final char[] OPENING = IntStream.range(' ', 0x250).filter(Character::isLetterOrDigit)
            .mapToObj(Character::toString).collect(Collectors.joining()).toCharArray();

    private final Text text;
    private final Predicate<Device> offered;
    private final Runnable changed;
    private List<CataloguedDevice> devices = List.of();
    private String reference = "";
    private boolean showing;

    /** Creates a field with its label; whenever another device is chosen, or none any more, something is run. */
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
                (contents, position) -> proposals(contents), all, OPENING);
        adapter.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
        adapter.setAutoActivationDelay(DELAY_MS);
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
        text.setSelection(0);
        changed.run();
    }

    /** What is typed names no device until one is chosen. */
    private void typed() {
        boolean other = !device().map(d -> d.device().name()).orElse("").equals(text.getText());
        if (!showing && other) {
            reference = "";
            changed.run();
        }
    }

    /** Says that something is typed and no device chosen; nothing while that is not so. */
    public Optional<String> problem() {
        return Optional.of(text.getText().strip()).filter(words -> reference.isEmpty() && !words.isEmpty())
                .map(UNNAMED::formatted);
    }

    /** Offers the devices of a catalogue; words that are being typed stay. */
    public void offer(Catalogue catalogue) {
        devices = catalogue.devices().stream().filter(device -> offered.test(device.device())).toList();
        if (!reference.isEmpty()) {
            show(reference);
        }
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
