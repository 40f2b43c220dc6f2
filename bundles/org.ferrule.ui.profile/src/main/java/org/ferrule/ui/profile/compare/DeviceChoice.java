/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.Device;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.fit.proposal.DeviceProposal;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.Icons;

/** Devices of a project, chosen one after the other: added, removed, moved up. */
public final class DeviceChoice {

    private static final int DIALOG_CHARACTERS = 90;
    private static final int DIALOG_LINES = 18;
    private static final int ROWS = 4;

    private final Table table;
    private final Predicate<Device> offered;
    private final IntFunction<String> sign;
    private final int most;
    private final Runnable changed;
    private final String title;
    private final Button add;
    private final Button remove;
    private final Button up;
    private final List<String> chosen = new ArrayList<>();
    private ProjectDevices project = ProjectDevices.NONE;

    /**
     * Creates an empty choice.
     *
     * @param sign by which each goes, by its number
     */
    public DeviceChoice(Composite parent, String title, Predicate<Device> offered, IntFunction<String> sign, int most,
            Runnable changed) {
        this.title = title;
        this.offered = offered;
        this.sign = sign;
        this.most = most;
        this.changed = changed;
        new Label(parent, SWT.NONE).setText(title);
        table = new Table(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).hint(120, ROWS * table.getItemHeight() + 6).applyTo(table);
        Composite buttons = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(4, 0).applyTo(buttons);
        add = button(buttons, "Add...", this::add);
        remove = button(buttons, "Remove", this::remove);
        up = button(buttons, "Up", this::up);
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> enable()));
        table.addListener(SWT.MouseMove, event -> table.setToolTipText(textAt(event.x, event.y)));
        table.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.DEL) {
                remove();
            }
        });
    }

    /** Names are longer than the list is wide. */
    private String textAt(int x, int y) {
        TableItem item = table.getItem(new Point(x, y));
        return item == null ? null : item.getText().replace("&", "&&");
    }

    private static Button button(Composite parent, String text, Runnable work) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        return button;
    }

    /** Returns the references that are chosen, in their order. */
    public List<String> references() {
        return List.copyOf(chosen);
    }

    /** Shows references, as they are named in a project. */
    public void show(ProjectDevices newProject, List<String> references) {
        project = newProject;
        chosen.clear();
        chosen.addAll(references);
        int selected = table.getSelectionIndex();
        table.removeAll();
        chosen.forEach(this::item);
        table.setSelection(Math.min(selected, chosen.size() - 1));
        enable();
    }

    private void item(String reference) {
        TableItem item = new TableItem(table, SWT.NONE);
        String letter = sign.apply(table.getItemCount() - 1);
        project.catalogue().devices().stream().filter(device -> device.isCalled(reference)).findFirst()
                .ifPresentOrElse(found -> {
                    item.setText(letter + "  " + name(found.device()));
                    item.setImage(icon(found));
                }, () -> {
                    item.setText(letter + "  " + reference + " (not there)");
                    item.setForeground(Colours.muted());
                });
    }

    private static String name(Device device) {
        return device.name().isEmpty() ? device.id() : device.name();
    }

    private static Image icon(CataloguedDevice device) {
        return Icons.of(org.ferrule.model.DeviceKind.get(device.device().kind().word())).image();
    }

    private void enable() {
        add.setEnabled(chosen.size() < most);
        remove.setEnabled(table.getSelectionCount() > 0);
        up.setEnabled(table.getSelectionCount() == 1 && table.getSelectionIndex() > 0);
    }

    private void add() {
        ElementListSelectionDialog dialog = new ElementListSelectionDialog(table.getShell(), new LabelProvider() {
            @Override
            public String getText(Object element) {
                return DeviceProposal.label((CataloguedDevice) element);
            }

            @Override
            public Image getImage(Object element) {
                return icon((CataloguedDevice) element);
            }
        });
        dialog.setTitle(title);
        dialog.setMessage("Type a part of the name; * stands for any letters:");
        dialog.setMultipleSelection(true);
        dialog.setSize(DIALOG_CHARACTERS, DIALOG_LINES);
        dialog.setElements(project.catalogue().devices().stream().filter(device -> offered.test(device.device()))
                .filter(device -> chosen.stream().noneMatch(device::isCalled)).toArray());
        if (dialog.open() == Window.OK) {
            Stream.of(dialog.getResult()).map(CataloguedDevice.class::cast).limit(Math.max(0, most - chosen.size()))
                    .map(device -> device.library() + "!" + device.device().id()).forEach(chosen::add);
            changed.run();
        }
    }

    private void remove() {
        List<String> gone = IntStream.of(table.getSelectionIndices()).mapToObj(chosen::get).toList();
        if (!gone.isEmpty()) {
            chosen.removeAll(gone);
            changed.run();
        }
    }

    private void up() {
        int index = table.getSelectionIndex();
        chosen.add(index - 1, chosen.remove(index));
        table.setSelection(index - 1);
        changed.run();
    }
}
