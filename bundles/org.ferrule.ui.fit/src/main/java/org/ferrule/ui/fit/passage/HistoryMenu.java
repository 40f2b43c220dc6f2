/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuCreator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.ferrule.engine.catalogue.CataloguedDevice;

/** The drop-down with the last questions. */
final class HistoryMenu extends Action implements IMenuCreator {

    private final PassageHistory history;
    private final Supplier<ProjectDevices> devices;
    private final Consumer<PassageQuestion> chosen;
    private Menu menu;

    HistoryMenu(PassageHistory history, Supplier<ProjectDevices> devices, Consumer<PassageQuestion> chosen) {
        super("Asked before", IAction.AS_DROP_DOWN_MENU);
        this.history = history;
        this.devices = devices;
        this.chosen = chosen;
        setToolTipText("The last questions");
        setMenuCreator(this);
    }

    @Override
    public Menu getMenu(Control parent) {
        dispose();
        menu = new Menu(parent);
        history.all().forEach(this::add);
        return menu;
    }

    @Override
    public Menu getMenu(Menu parent) {
        return null;
    }

    private void add(PassageQuestion question) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText((name(question.inner()) + "  in  " + name(question.outer()) + more(question)).replace("&", "&&"));
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> chosen.accept(question)));
    }

    private String more(PassageQuestion question) {
        String beside = question.conditions().beside().stream().map(each -> "  beside  " + name(each.device()))
                .collect(Collectors.joining());
        String extension = question.conditions().extension();
        return beside + (extension.isEmpty() ? "" : "  through  " + name(extension));
    }

    private String name(String reference) {
        return devices.get().catalogue().devices().stream().filter(device -> device.isCalled(reference)).findFirst()
                .map(CataloguedDevice::device).map(device -> device.name()).orElse(reference);
    }

    @Override
    public void dispose() {
        if (menu != null) {
            menu.dispose();
            menu = null;
        }
    }
}
