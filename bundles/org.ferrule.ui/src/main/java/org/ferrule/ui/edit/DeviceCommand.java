/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.action.Action;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.ui.document.DeviceReference;

/** Hands devices that are chosen somewhere to a command, wherever that is defined. */
public abstract class DeviceCommand extends Action {

    /** The parameter of these commands: paths of libraries and ids with exclamation marks between, a device to a line. */
    public static final String DEVICES = "org.ferrule.ui.profile.devices";

    private final String command;
    private final Supplier<List<DeviceReference>> devices;

    /**
     * Creates the action.
     *
     * @param command the id of the command
     * @param devices asked for when the action is shown and when it is run
     */
    protected DeviceCommand(String text, String command, Supplier<List<DeviceReference>> devices) {
        super(text);
        this.command = command;
        this.devices = devices;
    }

    @Override
    public boolean isEnabled() {
        return !devices.get().isEmpty();
    }

    @Override
    public void run() {
        Command known = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(command);
        String text = devices.get().stream().map(device -> device.library().getFullPath() + "!" + device.id())
                .collect(Collectors.joining("\n"));
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(
                    ParameterizedCommand.generateCommand(known, Map.of(DEVICES, text)), null);
        } catch (CommandException e) {
            StatusManager.getManager().handle(Status.error(e.getMessage(), e), StatusManager.SHOW);
        }
    }
}
