/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import org.ferrule.model.Claim;
import org.ferrule.model.ClaimType;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Phase;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Claim</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#getType <em>Type</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#getValue <em>Value</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#getSizes <em>Sizes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#isAlone <em>Alone</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClaimImpl#getCovers <em>Covers</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ClaimImpl extends SourcedImpl implements Claim
{
	/**
	 * The default value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected static final ClaimType TYPE_EDEFAULT = ClaimType.MINIMUM_LUMEN;

	/**
	 * The cached value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected ClaimType type = TYPE_EDEFAULT;

	/**
	 * This is true if the Type attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean typeESet;

	/**
	 * The default value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension VALUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected Dimension value = VALUE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getKinds() <em>Kinds</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKinds()
	 * @generated
	 * @ordered
	 */
	protected EList<DeviceKind> kinds;

	/**
	 * The cached value of the '{@link #getSizes() <em>Sizes</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSizes()
	 * @generated
	 * @ordered
	 */
	protected EList<String> sizes;

	/**
	 * The cached value of the '{@link #getDevices() <em>Devices</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevices()
	 * @generated
	 * @ordered
	 */
	protected EList<String> devices;

	/**
	 * The default value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension WIRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected Dimension wire = WIRE_EDEFAULT;

	/**
	 * The default value of the '{@link #isAlone() <em>Alone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isAlone()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ALONE_EDEFAULT = true;

	/**
	 * The cached value of the '{@link #isAlone() <em>Alone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isAlone()
	 * @generated
	 * @ordered
	 */
	protected boolean alone = ALONE_EDEFAULT;

	/**
	 * This is true if the Alone attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean aloneESet;

	/**
	 * The cached value of the '{@link #getCovers() <em>Covers</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCovers()
	 * @generated
	 * @ordered
	 */
	protected EList<Phase> covers;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ClaimImpl()
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
		return ModelPackage.Literals.CLAIM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClaimType getType()
	{
		return type;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setType(ClaimType newType)
	{
		ClaimType oldType = type;
		type = newType == null ? TYPE_EDEFAULT : newType;
		boolean oldTypeESet = typeESet;
		typeESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__TYPE, oldType, type, !oldTypeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetType()
	{
		ClaimType oldType = type;
		boolean oldTypeESet = typeESet;
		type = TYPE_EDEFAULT;
		typeESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.CLAIM__TYPE, oldType, TYPE_EDEFAULT, oldTypeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetType()
	{
		return typeESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getValue()
	{
		return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(Dimension newValue)
	{
		Dimension oldValue = value;
		value = newValue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__VALUE, oldValue, value));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DeviceKind> getKinds()
	{
		if (kinds == null)
		{
			kinds = new EDataTypeEList<DeviceKind>(DeviceKind.class, this, ModelPackage.CLAIM__KINDS);
		}
		return kinds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getSizes()
	{
		if (sizes == null)
		{
			sizes = new EDataTypeEList<String>(String.class, this, ModelPackage.CLAIM__SIZES);
		}
		return sizes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getDevices()
	{
		if (devices == null)
		{
			devices = new EDataTypeEList<String>(String.class, this, ModelPackage.CLAIM__DEVICES);
		}
		return devices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getWire()
	{
		return wire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWire(Dimension newWire)
	{
		Dimension oldWire = wire;
		wire = newWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__WIRE, oldWire, wire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isAlone()
	{
		return alone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAlone(boolean newAlone)
	{
		boolean oldAlone = alone;
		alone = newAlone;
		boolean oldAloneESet = aloneESet;
		aloneESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__ALONE, oldAlone, alone, !oldAloneESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetAlone()
	{
		boolean oldAlone = alone;
		boolean oldAloneESet = aloneESet;
		alone = ALONE_EDEFAULT;
		aloneESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.CLAIM__ALONE, oldAlone, ALONE_EDEFAULT, oldAloneESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetAlone()
	{
		return aloneESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Phase> getCovers()
	{
		if (covers == null)
		{
			covers = new EDataTypeEList<Phase>(Phase.class, this, ModelPackage.CLAIM__COVERS);
		}
		return covers;
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
			case ModelPackage.CLAIM__TYPE:
				return getType();
			case ModelPackage.CLAIM__VALUE:
				return getValue();
			case ModelPackage.CLAIM__KINDS:
				return getKinds();
			case ModelPackage.CLAIM__SIZES:
				return getSizes();
			case ModelPackage.CLAIM__DEVICES:
				return getDevices();
			case ModelPackage.CLAIM__WIRE:
				return getWire();
			case ModelPackage.CLAIM__ALONE:
				return isAlone();
			case ModelPackage.CLAIM__COVERS:
				return getCovers();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.CLAIM__TYPE:
				setType((ClaimType)newValue);
				return;
			case ModelPackage.CLAIM__VALUE:
				setValue((Dimension)newValue);
				return;
			case ModelPackage.CLAIM__KINDS:
				getKinds().clear();
				getKinds().addAll((Collection<? extends DeviceKind>)newValue);
				return;
			case ModelPackage.CLAIM__SIZES:
				getSizes().clear();
				getSizes().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.CLAIM__DEVICES:
				getDevices().clear();
				getDevices().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.CLAIM__WIRE:
				setWire((Dimension)newValue);
				return;
			case ModelPackage.CLAIM__ALONE:
				setAlone((Boolean)newValue);
				return;
			case ModelPackage.CLAIM__COVERS:
				getCovers().clear();
				getCovers().addAll((Collection<? extends Phase>)newValue);
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
			case ModelPackage.CLAIM__TYPE:
				unsetType();
				return;
			case ModelPackage.CLAIM__VALUE:
				setValue(VALUE_EDEFAULT);
				return;
			case ModelPackage.CLAIM__KINDS:
				getKinds().clear();
				return;
			case ModelPackage.CLAIM__SIZES:
				getSizes().clear();
				return;
			case ModelPackage.CLAIM__DEVICES:
				getDevices().clear();
				return;
			case ModelPackage.CLAIM__WIRE:
				setWire(WIRE_EDEFAULT);
				return;
			case ModelPackage.CLAIM__ALONE:
				unsetAlone();
				return;
			case ModelPackage.CLAIM__COVERS:
				getCovers().clear();
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
			case ModelPackage.CLAIM__TYPE:
				return isSetType();
			case ModelPackage.CLAIM__VALUE:
				return VALUE_EDEFAULT == null ? value != null : !VALUE_EDEFAULT.equals(value);
			case ModelPackage.CLAIM__KINDS:
				return kinds != null && !kinds.isEmpty();
			case ModelPackage.CLAIM__SIZES:
				return sizes != null && !sizes.isEmpty();
			case ModelPackage.CLAIM__DEVICES:
				return devices != null && !devices.isEmpty();
			case ModelPackage.CLAIM__WIRE:
				return WIRE_EDEFAULT == null ? wire != null : !WIRE_EDEFAULT.equals(wire);
			case ModelPackage.CLAIM__ALONE:
				return isSetAlone();
			case ModelPackage.CLAIM__COVERS:
				return covers != null && !covers.isEmpty();
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
		result.append(" (type: ");
		if (typeESet) result.append(type); else result.append("<unset>");
		result.append(", value: ");
		result.append(value);
		result.append(", kinds: ");
		result.append(kinds);
		result.append(", sizes: ");
		result.append(sizes);
		result.append(", devices: ");
		result.append(devices);
		result.append(", wire: ");
		result.append(wire);
		result.append(", alone: ");
		if (aloneESet) result.append(alone); else result.append("<unset>");
		result.append(", covers: ");
		result.append(covers);
		result.append(')');
		return result.toString();
	}

} //ClaimImpl
