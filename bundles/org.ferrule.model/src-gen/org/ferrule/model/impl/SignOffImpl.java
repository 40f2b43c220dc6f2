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

import org.ferrule.model.DocumentHash;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.SignOff;
import org.ferrule.model.SignedRow;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sign Off</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.SignOffImpl#getBy <em>By</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SignOffImpl#getDate <em>Date</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SignOffImpl#getRuleSet <em>Rule Set</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SignOffImpl#getAsked <em>Asked</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SignOffImpl#getDocuments <em>Documents</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SignOffImpl#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SignOffImpl#getRows <em>Rows</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SignOffImpl extends ElementImpl implements SignOff
{
	/**
	 * The default value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected static final String BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected String by = BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final String DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected String date = DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRuleSet() <em>Rule Set</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSet()
	 * @generated
	 * @ordered
	 */
	protected static final String RULE_SET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRuleSet() <em>Rule Set</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSet()
	 * @generated
	 * @ordered
	 */
	protected String ruleSet = RULE_SET_EDEFAULT;

	/**
	 * The cached value of the '{@link #getAsked() <em>Asked</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAsked()
	 * @generated
	 * @ordered
	 */
	protected EList<String> asked;

	/**
	 * The cached value of the '{@link #getDocuments() <em>Documents</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDocuments()
	 * @generated
	 * @ordered
	 */
	protected EList<DocumentHash> documents;

	/**
	 * The cached value of the '{@link #getInner() <em>Inner</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInner()
	 * @generated
	 * @ordered
	 */
	protected EList<String> inner;

	/**
	 * The cached value of the '{@link #getRows() <em>Rows</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRows()
	 * @generated
	 * @ordered
	 */
	protected EList<SignedRow> rows;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SignOffImpl()
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
		return ModelPackage.Literals.SIGN_OFF;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBy()
	{
		return by;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBy(String newBy)
	{
		String oldBy = by;
		by = newBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SIGN_OFF__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDate()
	{
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(String newDate)
	{
		String oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SIGN_OFF__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRuleSet()
	{
		return ruleSet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRuleSet(String newRuleSet)
	{
		String oldRuleSet = ruleSet;
		ruleSet = newRuleSet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SIGN_OFF__RULE_SET, oldRuleSet, ruleSet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getAsked()
	{
		if (asked == null)
		{
			asked = new EDataTypeEList<String>(String.class, this, ModelPackage.SIGN_OFF__ASKED);
		}
		return asked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DocumentHash> getDocuments()
	{
		if (documents == null)
		{
			documents = new EObjectContainmentEList<DocumentHash>(DocumentHash.class, this, ModelPackage.SIGN_OFF__DOCUMENTS);
		}
		return documents;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getInner()
	{
		if (inner == null)
		{
			inner = new EDataTypeEList<String>(String.class, this, ModelPackage.SIGN_OFF__INNER);
		}
		return inner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SignedRow> getRows()
	{
		if (rows == null)
		{
			rows = new EObjectContainmentEList<SignedRow>(SignedRow.class, this, ModelPackage.SIGN_OFF__ROWS);
		}
		return rows;
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
			case ModelPackage.SIGN_OFF__DOCUMENTS:
				return ((InternalEList<?>)getDocuments()).basicRemove(otherEnd, msgs);
			case ModelPackage.SIGN_OFF__ROWS:
				return ((InternalEList<?>)getRows()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.SIGN_OFF__BY:
				return getBy();
			case ModelPackage.SIGN_OFF__DATE:
				return getDate();
			case ModelPackage.SIGN_OFF__RULE_SET:
				return getRuleSet();
			case ModelPackage.SIGN_OFF__ASKED:
				return getAsked();
			case ModelPackage.SIGN_OFF__DOCUMENTS:
				return getDocuments();
			case ModelPackage.SIGN_OFF__INNER:
				return getInner();
			case ModelPackage.SIGN_OFF__ROWS:
				return getRows();
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
			case ModelPackage.SIGN_OFF__BY:
				setBy((String)newValue);
				return;
			case ModelPackage.SIGN_OFF__DATE:
				setDate((String)newValue);
				return;
			case ModelPackage.SIGN_OFF__RULE_SET:
				setRuleSet((String)newValue);
				return;
			case ModelPackage.SIGN_OFF__ASKED:
				getAsked().clear();
				getAsked().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.SIGN_OFF__DOCUMENTS:
				getDocuments().clear();
				getDocuments().addAll((Collection<? extends DocumentHash>)newValue);
				return;
			case ModelPackage.SIGN_OFF__INNER:
				getInner().clear();
				getInner().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.SIGN_OFF__ROWS:
				getRows().clear();
				getRows().addAll((Collection<? extends SignedRow>)newValue);
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
			case ModelPackage.SIGN_OFF__BY:
				setBy(BY_EDEFAULT);
				return;
			case ModelPackage.SIGN_OFF__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case ModelPackage.SIGN_OFF__RULE_SET:
				setRuleSet(RULE_SET_EDEFAULT);
				return;
			case ModelPackage.SIGN_OFF__ASKED:
				getAsked().clear();
				return;
			case ModelPackage.SIGN_OFF__DOCUMENTS:
				getDocuments().clear();
				return;
			case ModelPackage.SIGN_OFF__INNER:
				getInner().clear();
				return;
			case ModelPackage.SIGN_OFF__ROWS:
				getRows().clear();
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
			case ModelPackage.SIGN_OFF__BY:
				return BY_EDEFAULT == null ? by != null : !BY_EDEFAULT.equals(by);
			case ModelPackage.SIGN_OFF__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case ModelPackage.SIGN_OFF__RULE_SET:
				return RULE_SET_EDEFAULT == null ? ruleSet != null : !RULE_SET_EDEFAULT.equals(ruleSet);
			case ModelPackage.SIGN_OFF__ASKED:
				return asked != null && !asked.isEmpty();
			case ModelPackage.SIGN_OFF__DOCUMENTS:
				return documents != null && !documents.isEmpty();
			case ModelPackage.SIGN_OFF__INNER:
				return inner != null && !inner.isEmpty();
			case ModelPackage.SIGN_OFF__ROWS:
				return rows != null && !rows.isEmpty();
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
		result.append(" (by: ");
		result.append(by);
		result.append(", date: ");
		result.append(date);
		result.append(", ruleSet: ");
		result.append(ruleSet);
		result.append(", asked: ");
		result.append(asked);
		result.append(", inner: ");
		result.append(inner);
		result.append(')');
		return result.toString();
	}

} //SignOffImpl
