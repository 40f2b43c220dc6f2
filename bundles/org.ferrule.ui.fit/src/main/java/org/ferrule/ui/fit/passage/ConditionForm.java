/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.events.IExpansionListener;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.ferrule.ui.look.DropDown;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.ui.fit.passage.PassageConditions.Beside;
import org.ferrule.ui.fit.passage.PassageConditions.Bent;
import org.ferrule.ui.look.Tick;

/** What else holds in the daily question, folded away while nothing does. */
final class ConditionForm {

    private static final String HEADING = "What else holds";
    private static final List<String> BENDS = List.of("no bend", "of the lumen", "of the vessel");

    private final ExpandableComposite fold;
    private final Composite fields;
    private final Runnable changed;
    private final Runnable folded;
    private final List<BesideFields> beside;
    private final DeviceField extension;
    private final Text protrusion;
    private final DropDown bend;
    private final Text radius;
    private final Text degrees;
    private final Text width;
    private final Button afterInflation;

    /** The fields of one device that lies there already. */
    private record BesideFields(DeviceField device, Text tipAhead, Button used) {
    }

    /**
     * Creates the section.
     *
     * @param changed hears of every change
     * @param folded hears when it takes more or less room than before
     */
    ConditionForm(Composite parent, Runnable changed, Runnable folded) {
        this.changed = changed;
        this.folded = folded;
        fold = new ExpandableComposite(parent, SWT.NONE,
                ExpandableComposite.TWISTIE | ExpandableComposite.CLIENT_INDENT);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(fold);
        fields = new Composite(fold, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(fields);
        fold.setClient(fields);
        fold.addExpansionListener(IExpansionListener.expansionStateChangedAdapter(event -> folded.run()));
        beside = IntStream.of(0, 1).mapToObj(i -> beside(i == 0 ? "Beside" : "And beside")).toList();
        extension = new DeviceField(fields, "Through", device -> device.kind() == DeviceKind.GUIDE_EXTENSION, changed);
        protrusion = text("Protrudes", "0 mm; negative inside",
                "How far the extension's tip lies beyond the tip of what is in place");
        bend = bend();
        radius = text("Radius", "such as 20 mm", "Radius of the bend, to the centre line");
        degrees = text("Degrees", "longer than what passes", "How far the bend turns");
        width = text("Vessel", "such as 3 mm",
                "Diameter of a vessel that is bent: from it is told how it must straighten");
        afterInflation = flag("Goes in after use",
                "The device to pass has its outline after use, like a balloon that was inflated before");
        showHeading();
    }

    private BesideFields beside(String label) {
        DeviceField device = new DeviceField(fields, label, any -> true, changed);
        Text tipAhead = text("Tip beyond", "0 mm; negative inside",
                "How far its tip lies beyond the tip of what is in place");
        return new BesideFields(device, tipAhead, flag("Used before", "It has its outline after use"));
    }

    private Text text(String label, String message, String explained) {
        new Label(fields, SWT.NONE).setText(label);
        Text text = new Text(fields, SWT.BORDER);
        text.setMessage(message);
        text.setToolTipText(explained);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addModifyListener(event -> changed.run());
        return text;
    }

    private DropDown bend() {
        new Label(fields, SWT.NONE).setText("Bend");
        DropDown list = new DropDown(fields, PassageForm.LEAST_WIDTH).onChoice(changed);
        list.show(BENDS, 0);
        return list;
    }

    private Button flag(String label, String explained) {
        new Label(fields, SWT.NONE);
        Button box = Tick.box(fields, label);
        box.setToolTipText(explained);
        box.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
        return box;
    }

    /** Offers the devices of a catalogue. */
    void offer(Catalogue catalogue) {
        beside.forEach(each -> each.device().offer(catalogue));
        extension.offer(catalogue);
    }

    /** Shows conditions, and unfolds where there are any. */
    void show(PassageConditions conditions) {
        for (int i = 0; i < beside.size(); i++) {
            Optional<Beside> shown = conditions.beside().stream().skip(i).findFirst();
            beside.get(i).device().show(shown.map(Beside::device).orElse(""));
            beside.get(i).tipAhead().setText(shown.map(Beside::tipAhead).orElse(""));
            beside.get(i).used().setSelection(shown.map(Beside::used).orElse(false));
        }
        extension.show(conditions.extension());
        protrusion.setText(conditions.protrusion());
        bend.choose(conditions.bend().map(b -> b.vessel() ? 2 : 1).orElse(0));
        radius.setText(conditions.bend().map(Bent::radius).orElse(""));
        degrees.setText(conditions.bend().map(Bent::degrees).orElse(""));
        width.setText(conditions.bend().map(Bent::width).orElse(""));
        afterInflation.setSelection(conditions.afterInflation());
        if (conditions.count() > 0 && !fold.isExpanded()) {
            fold.setExpanded(true);
        }
        showHeading();
        folded.run();
    }

    /** Returns the fields of devices. */
    Stream<DeviceField> devices() {
        return Stream.concat(beside.stream().map(BesideFields::device), Stream.of(extension));
    }

    /** Returns the conditions as they are filled in. */
    PassageConditions conditions() {
        Stream<Beside> there = beside.stream().filter(each -> !each.device().reference().isEmpty())
                .map(each -> new Beside(each.device().reference(), each.tipAhead().getText().strip(),
                        each.used().getSelection()));
        int bent = bend.chosen();
        Optional<Bent> bends = bent > 0 && !radius.getText().isBlank()
                ? Optional.of(new Bent(bent == 2, radius.getText().strip(), degrees.getText().strip(),
                        width.getText().strip()))
                : Optional.empty();
        return new PassageConditions(there.toList(), extension.reference(), protrusion.getText().strip(), bends,
                afterInflation.getSelection());
    }

    /** Says in the heading how much is filled in, since that may be folded away. */
    void showHeading() {
        int count = conditions().count();
        fold.setText(count == 0 ? HEADING : HEADING + " (" + count + ")");
        fold.getParent().layout(true, true);
    }
}
