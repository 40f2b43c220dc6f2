/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.Occupant;

import org.ferrule.quantity.Offset;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Occupant</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.OccupantImpl#getDevice <em>Device</em>}</li>
 *   <li>{@link org.ferrule.model.impl.OccupantImpl#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.OccupantImpl#getTipAhead <em>Tip Ahead</em>}</li>
 *   <li>{@link org.ferrule.model.impl.OccupantImpl#isUsed <em>Used</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OccupantImpl extends ElementImpl implements Occupant
{
	/**
	 * The default value of the '{@link #getDevice() <em>Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevice()
	 * @generated
	 * @ordered
	 */
	protected static final String DEVICE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDevice() <em>Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevice()
	 * @generated
	 * @ordered
	 */
	protected String device = DEVICE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected static final String WIRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected String wire = WIRE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTipAhead() <em>Tip Ahead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTipAhead()
	 * @generated
	 * @ordered
	 */
	protected static final Offset TIP_AHEAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTipAhead() <em>Tip Ahead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTipAhead()
	 * @generated
	 * @ordered
	 */
	protected Offset tipAhead = TIP_AHEAD_EDEFAULT;

	/**
	 * The default value of the '{@link #isUsed() <em>Used</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isUsed()
	 * @generated
	 * @ordered
	 */
	protected static final boolean USED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isUsed() <em>Used</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isUsed()
	 * @generated
	 * @ordered
	 */
	protected boolean used = USED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OccupantImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.OCCUPANT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDevice()
	{
		return device;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDevice(String newDevice)
	{
		String oldDevice = device;
		device = newDevice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.OCCUPANT__DEVICE, oldDevice, device));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWire()
	{
		return wire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWire(String newWire)
	{
		String oldWire = wire;
		wire = newWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.OCCUPANT__WIRE, oldWire, wire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Offset getTipAhead()
	{
		return tipAhead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTipAhead(Offset newTipAhead)
	{
		Offset oldTipAhead = tipAhead;
		tipAhead = newTipAhead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.OCCUPANT__TIP_AHEAD, oldTipAhead, tipAhead));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isUsed()
	{
		return used;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUsed(boolean newUsed)
	{
		boolean oldUsed = used;
		used = newUsed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.OCCUPANT__USED, oldUsed, used));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.OCCUPANT__DEVICE:
				return getDevice();
			case ModelPackage.OCCUPANT__WIRE:
				return getWire();
			case ModelPackage.OCCUPANT__TIP_AHEAD:
				return getTipAhead();
			case ModelPackage.OCCUPANT__USED:
				return isUsed();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.OCCUPANT__DEVICE:
				setDevice((String)newValue);
				return;
			case ModelPackage.OCCUPANT__WIRE:
				setWire((String)newValue);
				return;
			case ModelPackage.OCCUPANT__TIP_AHEAD:
				setTipAhead((Offset)newValue);
				return;
			case ModelPackage.OCCUPANT__USED:
				setUsed((Boolean)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.OCCUPANT__DEVICE:
				setDevice(DEVICE_EDEFAULT);
				return;
			case ModelPackage.OCCUPANT__WIRE:
				setWire(WIRE_EDEFAULT);
				return;
			case ModelPackage.OCCUPANT__TIP_AHEAD:
				setTipAhead(TIP_AHEAD_EDEFAULT);
				return;
			case ModelPackage.OCCUPANT__USED:
				setUsed(USED_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.OCCUPANT__DEVICE:
				return DEVICE_EDEFAULT == null ? device != null : !DEVICE_EDEFAULT.equals(device);
			case ModelPackage.OCCUPANT__WIRE:
				return WIRE_EDEFAULT == null ? wire != null : !WIRE_EDEFAULT.equals(wire);
			case ModelPackage.OCCUPANT__TIP_AHEAD:
				return TIP_AHEAD_EDEFAULT == null ? tipAhead != null : !TIP_AHEAD_EDEFAULT.equals(tipAhead);
			case ModelPackage.OCCUPANT__USED:
				return used != USED_EDEFAULT;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (device: ");
		result.append(device);
		result.append(", wire: ");
		result.append(wire);
		result.append(", tipAhead: ");
		result.append(tipAhead);
		result.append(", used: ");
		result.append(used);
		result.append(')');
		return result.toString();
	}

} //OccupantImpl
