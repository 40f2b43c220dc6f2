/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MenuListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** The menu of the table; its entries stand with their keys, which the workbench or the table itself handles. */
final class DeviceMenu {

    private final Menu menu;

    /**
     * Creates an empty menu.
     *
     * @param update is run before it is shown
     */
    DeviceMenu(Control control, Runnable update) {
        menu = new Menu(control);
        menu.addMenuListener(MenuListener.menuShownAdapter(event -> update.run()));
        control.setMenu(menu);
    }

    MenuItem add(String text, String keys, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(keys.isEmpty() ? text : text + "\t" + keys);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return item;
    }

    /** Adds what other parts of the workbench offer; it is asked whether it can be done whenever the menu is shown. */
    void add(IAction action) {
        MenuItem item = add(action.getText(), "", action::run);
        menu.addMenuListener(MenuListener.menuShownAdapter(event -> item.setEnabled(action.isEnabled())));
    }

    void separator() {
        new MenuItem(menu, SWT.SEPARATOR);
    }
}
