/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Hazard;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Move;
import org.ferrule.model.Need;
import org.ferrule.model.Role;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Move</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.MoveImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.impl.MoveImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.impl.MoveImpl#getHazard <em>Hazard</em>}</li>
 *   <li>{@link org.ferrule.model.impl.MoveImpl#getRoles <em>Roles</em>}</li>
 *   <li>{@link org.ferrule.model.impl.MoveImpl#getNeeds <em>Needs</em>}</li>
 *   <li>{@link org.ferrule.model.impl.MoveImpl#getSetups <em>Setups</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class MoveImpl extends SourcedImpl implements Move
{
	/**
	 * The default value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected static final String ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected String id = ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getHazard() <em>Hazard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHazard()
	 * @generated
	 * @ordered
	 */
	protected static final Hazard HAZARD_EDEFAULT = Hazard.USUAL;

	/**
	 * The cached value of the '{@link #getHazard() <em>Hazard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHazard()
	 * @generated
	 * @ordered
	 */
	protected Hazard hazard = HAZARD_EDEFAULT;

	/**
	 * This is true if the Hazard attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean hazardESet;

	/**
	 * The cached value of the '{@link #getRoles() <em>Roles</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoles()
	 * @generated
	 * @ordered
	 */
	protected EList<Role> roles;

	/**
	 * The cached value of the '{@link #getNeeds() <em>Needs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeeds()
	 * @generated
	 * @ordered
	 */
	protected EList<Need> needs;

	/**
	 * The cached value of the '{@link #getSetups() <em>Setups</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSetups()
	 * @generated
	 * @ordered
	 */
	protected EList<String> setups;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MoveImpl()
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
		return ModelPackage.Literals.MOVE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getId()
	{
		return id;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setId(String newId)
	{
		String oldId = id;
		id = newId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOVE__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName)
	{
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOVE__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Hazard getHazard()
	{
		return hazard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHazard(Hazard newHazard)
	{
		Hazard oldHazard = hazard;
		hazard = newHazard == null ? HAZARD_EDEFAULT : newHazard;
		boolean oldHazardESet = hazardESet;
		hazardESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOVE__HAZARD, oldHazard, hazard, !oldHazardESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetHazard()
	{
		Hazard oldHazard = hazard;
		boolean oldHazardESet = hazardESet;
		hazard = HAZARD_EDEFAULT;
		hazardESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.MOVE__HAZARD, oldHazard, HAZARD_EDEFAULT, oldHazardESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetHazard()
	{
		return hazardESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Role> getRoles()
	{
		if (roles == null)
		{
			roles = new EObjectContainmentEList<Role>(Role.class, this, ModelPackage.MOVE__ROLES);
		}
		return roles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Need> getNeeds()
	{
		if (needs == null)
		{
			needs = new EObjectContainmentEList<Need>(Need.class, this, ModelPackage.MOVE__NEEDS);
		}
		return needs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getSetups()
	{
		if (setups == null)
		{
			setups = new EDataTypeEList<String>(String.class, this, ModelPackage.MOVE__SETUPS);
		}
		return setups;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.MOVE__ROLES:
				return ((InternalEList<?>)getRoles()).basicRemove(otherEnd, msgs);
			case ModelPackage.MOVE__NEEDS:
				return ((InternalEList<?>)getNeeds()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
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
			case ModelPackage.MOVE__ID:
				return getId();
			case ModelPackage.MOVE__NAME:
				return getName();
			case ModelPackage.MOVE__HAZARD:
				return getHazard();
			case ModelPackage.MOVE__ROLES:
				return getRoles();
			case ModelPackage.MOVE__NEEDS:
				return getNeeds();
			case ModelPackage.MOVE__SETUPS:
				return getSetups();
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
			case ModelPackage.MOVE__ID:
				setId((String)newValue);
				return;
			case ModelPackage.MOVE__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.MOVE__HAZARD:
				setHazard((Hazard)newValue);
				return;
			case ModelPackage.MOVE__ROLES:
				getRoles().clear();
				getRoles().addAll((Collection<? extends Role>)newValue);
				return;
			case ModelPackage.MOVE__NEEDS:
				getNeeds().clear();
				getNeeds().addAll((Collection<? extends Need>)newValue);
				return;
			case ModelPackage.MOVE__SETUPS:
				getSetups().clear();
				getSetups().addAll((Collection<? extends String>)newValue);
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
			case ModelPackage.MOVE__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.MOVE__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.MOVE__HAZARD:
				unsetHazard();
				return;
			case ModelPackage.MOVE__ROLES:
				getRoles().clear();
				return;
			case ModelPackage.MOVE__NEEDS:
				getNeeds().clear();
				return;
			case ModelPackage.MOVE__SETUPS:
				getSetups().clear();
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
			case ModelPackage.MOVE__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.MOVE__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.MOVE__HAZARD:
				return isSetHazard();
			case ModelPackage.MOVE__ROLES:
				return roles != null && !roles.isEmpty();
			case ModelPackage.MOVE__NEEDS:
				return needs != null && !needs.isEmpty();
			case ModelPackage.MOVE__SETUPS:
				return setups != null && !setups.isEmpty();
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
		result.append(" (id: ");
		result.append(id);
		result.append(", name: ");
		result.append(name);
		result.append(", hazard: ");
		if (hazardESet) result.append(hazard); else result.append("<unset>");
		result.append(", setups: ");
		result.append(setups);
		result.append(')');
		return result.toString();
	}

} //MoveImpl
