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

import org.ferrule.model.Axis;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.Grouping;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Sorting;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Axis</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.AxisImpl#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AxisImpl#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AxisImpl#getHidden <em>Hidden</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AxisImpl#getGroupBy <em>Group By</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AxisImpl#getSortBy <em>Sort By</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AxisImpl extends ElementImpl implements Axis
{
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
	 * The cached value of the '{@link #getDevices() <em>Devices</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevices()
	 * @generated
	 * @ordered
	 */
	protected EList<String> devices;

	/**
	 * The cached value of the '{@link #getHidden() <em>Hidden</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHidden()
	 * @generated
	 * @ordered
	 */
	protected EList<String> hidden;

	/**
	 * The default value of the '{@link #getGroupBy() <em>Group By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroupBy()
	 * @generated
	 * @ordered
	 */
	protected static final Grouping GROUP_BY_EDEFAULT = Grouping.NONE;

	/**
	 * The cached value of the '{@link #getGroupBy() <em>Group By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroupBy()
	 * @generated
	 * @ordered
	 */
	protected Grouping groupBy = GROUP_BY_EDEFAULT;

	/**
	 * This is true if the Group By attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean groupByESet;

	/**
	 * The default value of the '{@link #getSortBy() <em>Sort By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSortBy()
	 * @generated
	 * @ordered
	 */
	protected static final Sorting SORT_BY_EDEFAULT = Sorting.AS_LISTED;

	/**
	 * The cached value of the '{@link #getSortBy() <em>Sort By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSortBy()
	 * @generated
	 * @ordered
	 */
	protected Sorting sortBy = SORT_BY_EDEFAULT;

	/**
	 * This is true if the Sort By attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean sortByESet;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AxisImpl()
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
		return ModelPackage.Literals.AXIS;
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
			kinds = new EDataTypeEList<DeviceKind>(DeviceKind.class, this, ModelPackage.AXIS__KINDS);
		}
		return kinds;
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
			devices = new EDataTypeEList<String>(String.class, this, ModelPackage.AXIS__DEVICES);
		}
		return devices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getHidden()
	{
		if (hidden == null)
		{
			hidden = new EDataTypeEList<String>(String.class, this, ModelPackage.AXIS__HIDDEN);
		}
		return hidden;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Grouping getGroupBy()
	{
		return groupBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroupBy(Grouping newGroupBy)
	{
		Grouping oldGroupBy = groupBy;
		groupBy = newGroupBy == null ? GROUP_BY_EDEFAULT : newGroupBy;
		boolean oldGroupByESet = groupByESet;
		groupByESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AXIS__GROUP_BY, oldGroupBy, groupBy, !oldGroupByESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetGroupBy()
	{
		Grouping oldGroupBy = groupBy;
		boolean oldGroupByESet = groupByESet;
		groupBy = GROUP_BY_EDEFAULT;
		groupByESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.AXIS__GROUP_BY, oldGroupBy, GROUP_BY_EDEFAULT, oldGroupByESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetGroupBy()
	{
		return groupByESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Sorting getSortBy()
	{
		return sortBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSortBy(Sorting newSortBy)
	{
		Sorting oldSortBy = sortBy;
		sortBy = newSortBy == null ? SORT_BY_EDEFAULT : newSortBy;
		boolean oldSortByESet = sortByESet;
		sortByESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AXIS__SORT_BY, oldSortBy, sortBy, !oldSortByESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetSortBy()
	{
		Sorting oldSortBy = sortBy;
		boolean oldSortByESet = sortByESet;
		sortBy = SORT_BY_EDEFAULT;
		sortByESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.AXIS__SORT_BY, oldSortBy, SORT_BY_EDEFAULT, oldSortByESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetSortBy()
	{
		return sortByESet;
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
			case ModelPackage.AXIS__KINDS:
				return getKinds();
			case ModelPackage.AXIS__DEVICES:
				return getDevices();
			case ModelPackage.AXIS__HIDDEN:
				return getHidden();
			case ModelPackage.AXIS__GROUP_BY:
				return getGroupBy();
			case ModelPackage.AXIS__SORT_BY:
				return getSortBy();
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
			case ModelPackage.AXIS__KINDS:
				getKinds().clear();
				getKinds().addAll((Collection<? extends DeviceKind>)newValue);
				return;
			case ModelPackage.AXIS__DEVICES:
				getDevices().clear();
				getDevices().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.AXIS__HIDDEN:
				getHidden().clear();
				getHidden().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.AXIS__GROUP_BY:
				setGroupBy((Grouping)newValue);
				return;
			case ModelPackage.AXIS__SORT_BY:
				setSortBy((Sorting)newValue);
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
			case ModelPackage.AXIS__KINDS:
				getKinds().clear();
				return;
			case ModelPackage.AXIS__DEVICES:
				getDevices().clear();
				return;
			case ModelPackage.AXIS__HIDDEN:
				getHidden().clear();
				return;
			case ModelPackage.AXIS__GROUP_BY:
				unsetGroupBy();
				return;
			case ModelPackage.AXIS__SORT_BY:
				unsetSortBy();
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
			case ModelPackage.AXIS__KINDS:
				return kinds != null && !kinds.isEmpty();
			case ModelPackage.AXIS__DEVICES:
				return devices != null && !devices.isEmpty();
			case ModelPackage.AXIS__HIDDEN:
				return hidden != null && !hidden.isEmpty();
			case ModelPackage.AXIS__GROUP_BY:
				return isSetGroupBy();
			case ModelPackage.AXIS__SORT_BY:
				return isSetSortBy();
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
		result.append(" (kinds: ");
		result.append(kinds);
		result.append(", devices: ");
		result.append(devices);
		result.append(", hidden: ");
		result.append(hidden);
		result.append(", groupBy: ");
		if (groupByESet) result.append(groupBy); else result.append("<unset>");
		result.append(", sortBy: ");
		if (sortByESet) result.append(sortBy); else result.append("<unset>");
		result.append(')');
		return result.toString();
	}

} //AxisImpl
