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

import org.ferrule.model.Access;
import org.ferrule.model.CaseAim;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Closing;
import org.ferrule.model.Costs;
import org.ferrule.model.Lesion;
import org.ferrule.model.LesionMeasures;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.PatientFigures;
import org.ferrule.model.SideBranch;
import org.ferrule.model.StatedFact;
import org.ferrule.model.SystemInPlace;
import org.ferrule.model.VesselPath;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Case Document</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getLibraries <em>Libraries</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getRules <em>Rules</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getTechniques <em>Techniques</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getShelf <em>Shelf</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getDay <em>Day</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getAccess <em>Access</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getSystem <em>System</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getPath <em>Path</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getLesion <em>Lesion</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getBranch <em>Branch</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getDeliver <em>Deliver</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getFacts <em>Facts</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getMeasures <em>Measures</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getPatient <em>Patient</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getAim <em>Aim</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getSpent <em>Spent</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getLog <em>Log</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseDocumentImpl#getClosing <em>Closing</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CaseDocumentImpl extends DocumentImpl implements CaseDocument
{
	/**
	 * The cached value of the '{@link #getLibraries() <em>Libraries</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLibraries()
	 * @generated
	 * @ordered
	 */
	protected EList<String> libraries;

	/**
	 * The default value of the '{@link #getRules() <em>Rules</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRules()
	 * @generated
	 * @ordered
	 */
	protected static final String RULES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRules() <em>Rules</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRules()
	 * @generated
	 * @ordered
	 */
	protected String rules = RULES_EDEFAULT;

	/**
	 * The default value of the '{@link #getTechniques() <em>Techniques</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTechniques()
	 * @generated
	 * @ordered
	 */
	protected static final String TECHNIQUES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTechniques() <em>Techniques</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTechniques()
	 * @generated
	 * @ordered
	 */
	protected String techniques = TECHNIQUES_EDEFAULT;

	/**
	 * The default value of the '{@link #getShelf() <em>Shelf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelf()
	 * @generated
	 * @ordered
	 */
	protected static final String SHELF_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShelf() <em>Shelf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelf()
	 * @generated
	 * @ordered
	 */
	protected String shelf = SHELF_EDEFAULT;

	/**
	 * The default value of the '{@link #getDay() <em>Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDay()
	 * @generated
	 * @ordered
	 */
	protected static final String DAY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDay() <em>Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDay()
	 * @generated
	 * @ordered
	 */
	protected String day = DAY_EDEFAULT;

	/**
	 * The cached value of the '{@link #getAccess() <em>Access</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccess()
	 * @generated
	 * @ordered
	 */
	protected Access access;

	/**
	 * The cached value of the '{@link #getSystem() <em>System</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSystem()
	 * @generated
	 * @ordered
	 */
	protected SystemInPlace system;

	/**
	 * The cached value of the '{@link #getPath() <em>Path</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected VesselPath path;

	/**
	 * The cached value of the '{@link #getLesion() <em>Lesion</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLesion()
	 * @generated
	 * @ordered
	 */
	protected Lesion lesion;

	/**
	 * The cached value of the '{@link #getBranch() <em>Branch</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBranch()
	 * @generated
	 * @ordered
	 */
	protected SideBranch branch;

	/**
	 * The default value of the '{@link #getDeliver() <em>Deliver</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeliver()
	 * @generated
	 * @ordered
	 */
	protected static final String DELIVER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDeliver() <em>Deliver</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeliver()
	 * @generated
	 * @ordered
	 */
	protected String deliver = DELIVER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFacts() <em>Facts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFacts()
	 * @generated
	 * @ordered
	 */
	protected EList<StatedFact> facts;

	/**
	 * The cached value of the '{@link #getMeasures() <em>Measures</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasures()
	 * @generated
	 * @ordered
	 */
	protected LesionMeasures measures;

	/**
	 * The cached value of the '{@link #getPatient() <em>Patient</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPatient()
	 * @generated
	 * @ordered
	 */
	protected PatientFigures patient;

	/**
	 * The cached value of the '{@link #getAim() <em>Aim</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAim()
	 * @generated
	 * @ordered
	 */
	protected CaseAim aim;

	/**
	 * The cached value of the '{@link #getSpent() <em>Spent</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpent()
	 * @generated
	 * @ordered
	 */
	protected Costs spent;

	/**
	 * The cached value of the '{@link #getLog() <em>Log</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLog()
	 * @generated
	 * @ordered
	 */
	protected EList<LoggedAttempt> log;

	/**
	 * The cached value of the '{@link #getClosing() <em>Closing</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClosing()
	 * @generated
	 * @ordered
	 */
	protected Closing closing;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CaseDocumentImpl()
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
		return ModelPackage.Literals.CASE_DOCUMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getLibraries()
	{
		if (libraries == null)
		{
			libraries = new EDataTypeEList<String>(String.class, this, ModelPackage.CASE_DOCUMENT__LIBRARIES);
		}
		return libraries;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRules()
	{
		return rules;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRules(String newRules)
	{
		String oldRules = rules;
		rules = newRules;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__RULES, oldRules, rules));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTechniques()
	{
		return techniques;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTechniques(String newTechniques)
	{
		String oldTechniques = techniques;
		techniques = newTechniques;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__TECHNIQUES, oldTechniques, techniques));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getShelf()
	{
		return shelf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShelf(String newShelf)
	{
		String oldShelf = shelf;
		shelf = newShelf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__SHELF, oldShelf, shelf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDay()
	{
		return day;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDay(String newDay)
	{
		String oldDay = day;
		day = newDay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__DAY, oldDay, day));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Access getAccess()
	{
		return access;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAccess(Access newAccess, NotificationChain msgs)
	{
		Access oldAccess = access;
		access = newAccess;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__ACCESS, oldAccess, newAccess);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAccess(Access newAccess)
	{
		if (newAccess != access)
		{
			NotificationChain msgs = null;
			if (access != null)
				msgs = ((InternalEObject)access).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__ACCESS, null, msgs);
			if (newAccess != null)
				msgs = ((InternalEObject)newAccess).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__ACCESS, null, msgs);
			msgs = basicSetAccess(newAccess, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__ACCESS, newAccess, newAccess));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SystemInPlace getSystem()
	{
		return system;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSystem(SystemInPlace newSystem, NotificationChain msgs)
	{
		SystemInPlace oldSystem = system;
		system = newSystem;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__SYSTEM, oldSystem, newSystem);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSystem(SystemInPlace newSystem)
	{
		if (newSystem != system)
		{
			NotificationChain msgs = null;
			if (system != null)
				msgs = ((InternalEObject)system).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__SYSTEM, null, msgs);
			if (newSystem != null)
				msgs = ((InternalEObject)newSystem).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__SYSTEM, null, msgs);
			msgs = basicSetSystem(newSystem, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__SYSTEM, newSystem, newSystem));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VesselPath getPath()
	{
		return path;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPath(VesselPath newPath, NotificationChain msgs)
	{
		VesselPath oldPath = path;
		path = newPath;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__PATH, oldPath, newPath);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPath(VesselPath newPath)
	{
		if (newPath != path)
		{
			NotificationChain msgs = null;
			if (path != null)
				msgs = ((InternalEObject)path).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__PATH, null, msgs);
			if (newPath != null)
				msgs = ((InternalEObject)newPath).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__PATH, null, msgs);
			msgs = basicSetPath(newPath, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__PATH, newPath, newPath));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lesion getLesion()
	{
		return lesion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLesion(Lesion newLesion, NotificationChain msgs)
	{
		Lesion oldLesion = lesion;
		lesion = newLesion;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__LESION, oldLesion, newLesion);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLesion(Lesion newLesion)
	{
		if (newLesion != lesion)
		{
			NotificationChain msgs = null;
			if (lesion != null)
				msgs = ((InternalEObject)lesion).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__LESION, null, msgs);
			if (newLesion != null)
				msgs = ((InternalEObject)newLesion).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__LESION, null, msgs);
			msgs = basicSetLesion(newLesion, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__LESION, newLesion, newLesion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SideBranch getBranch()
	{
		return branch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetBranch(SideBranch newBranch, NotificationChain msgs)
	{
		SideBranch oldBranch = branch;
		branch = newBranch;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__BRANCH, oldBranch, newBranch);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBranch(SideBranch newBranch)
	{
		if (newBranch != branch)
		{
			NotificationChain msgs = null;
			if (branch != null)
				msgs = ((InternalEObject)branch).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__BRANCH, null, msgs);
			if (newBranch != null)
				msgs = ((InternalEObject)newBranch).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__BRANCH, null, msgs);
			msgs = basicSetBranch(newBranch, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__BRANCH, newBranch, newBranch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDeliver()
	{
		return deliver;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeliver(String newDeliver)
	{
		String oldDeliver = deliver;
		deliver = newDeliver;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__DELIVER, oldDeliver, deliver));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StatedFact> getFacts()
	{
		if (facts == null)
		{
			facts = new EObjectContainmentEList<StatedFact>(StatedFact.class, this, ModelPackage.CASE_DOCUMENT__FACTS);
		}
		return facts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LesionMeasures getMeasures()
	{
		return measures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMeasures(LesionMeasures newMeasures, NotificationChain msgs)
	{
		LesionMeasures oldMeasures = measures;
		measures = newMeasures;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__MEASURES, oldMeasures, newMeasures);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasures(LesionMeasures newMeasures)
	{
		if (newMeasures != measures)
		{
			NotificationChain msgs = null;
			if (measures != null)
				msgs = ((InternalEObject)measures).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__MEASURES, null, msgs);
			if (newMeasures != null)
				msgs = ((InternalEObject)newMeasures).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__MEASURES, null, msgs);
			msgs = basicSetMeasures(newMeasures, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__MEASURES, newMeasures, newMeasures));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PatientFigures getPatient()
	{
		return patient;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPatient(PatientFigures newPatient, NotificationChain msgs)
	{
		PatientFigures oldPatient = patient;
		patient = newPatient;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__PATIENT, oldPatient, newPatient);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPatient(PatientFigures newPatient)
	{
		if (newPatient != patient)
		{
			NotificationChain msgs = null;
			if (patient != null)
				msgs = ((InternalEObject)patient).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__PATIENT, null, msgs);
			if (newPatient != null)
				msgs = ((InternalEObject)newPatient).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__PATIENT, null, msgs);
			msgs = basicSetPatient(newPatient, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__PATIENT, newPatient, newPatient));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CaseAim getAim()
	{
		return aim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAim(CaseAim newAim, NotificationChain msgs)
	{
		CaseAim oldAim = aim;
		aim = newAim;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__AIM, oldAim, newAim);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAim(CaseAim newAim)
	{
		if (newAim != aim)
		{
			NotificationChain msgs = null;
			if (aim != null)
				msgs = ((InternalEObject)aim).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__AIM, null, msgs);
			if (newAim != null)
				msgs = ((InternalEObject)newAim).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__AIM, null, msgs);
			msgs = basicSetAim(newAim, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__AIM, newAim, newAim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Costs getSpent()
	{
		return spent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSpent(Costs newSpent, NotificationChain msgs)
	{
		Costs oldSpent = spent;
		spent = newSpent;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__SPENT, oldSpent, newSpent);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpent(Costs newSpent)
	{
		if (newSpent != spent)
		{
			NotificationChain msgs = null;
			if (spent != null)
				msgs = ((InternalEObject)spent).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__SPENT, null, msgs);
			if (newSpent != null)
				msgs = ((InternalEObject)newSpent).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__SPENT, null, msgs);
			msgs = basicSetSpent(newSpent, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__SPENT, newSpent, newSpent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LoggedAttempt> getLog()
	{
		if (log == null)
		{
			log = new EObjectContainmentEList<LoggedAttempt>(LoggedAttempt.class, this, ModelPackage.CASE_DOCUMENT__LOG);
		}
		return log;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Closing getClosing()
	{
		return closing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetClosing(Closing newClosing, NotificationChain msgs)
	{
		Closing oldClosing = closing;
		closing = newClosing;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__CLOSING, oldClosing, newClosing);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClosing(Closing newClosing)
	{
		if (newClosing != closing)
		{
			NotificationChain msgs = null;
			if (closing != null)
				msgs = ((InternalEObject)closing).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__CLOSING, null, msgs);
			if (newClosing != null)
				msgs = ((InternalEObject)newClosing).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_DOCUMENT__CLOSING, null, msgs);
			msgs = basicSetClosing(newClosing, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_DOCUMENT__CLOSING, newClosing, newClosing));
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
			case ModelPackage.CASE_DOCUMENT__ACCESS:
				return basicSetAccess(null, msgs);
			case ModelPackage.CASE_DOCUMENT__SYSTEM:
				return basicSetSystem(null, msgs);
			case ModelPackage.CASE_DOCUMENT__PATH:
				return basicSetPath(null, msgs);
			case ModelPackage.CASE_DOCUMENT__LESION:
				return basicSetLesion(null, msgs);
			case ModelPackage.CASE_DOCUMENT__BRANCH:
				return basicSetBranch(null, msgs);
			case ModelPackage.CASE_DOCUMENT__FACTS:
				return ((InternalEList<?>)getFacts()).basicRemove(otherEnd, msgs);
			case ModelPackage.CASE_DOCUMENT__MEASURES:
				return basicSetMeasures(null, msgs);
			case ModelPackage.CASE_DOCUMENT__PATIENT:
				return basicSetPatient(null, msgs);
			case ModelPackage.CASE_DOCUMENT__AIM:
				return basicSetAim(null, msgs);
			case ModelPackage.CASE_DOCUMENT__SPENT:
				return basicSetSpent(null, msgs);
			case ModelPackage.CASE_DOCUMENT__LOG:
				return ((InternalEList<?>)getLog()).basicRemove(otherEnd, msgs);
			case ModelPackage.CASE_DOCUMENT__CLOSING:
				return basicSetClosing(null, msgs);
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
			case ModelPackage.CASE_DOCUMENT__LIBRARIES:
				return getLibraries();
			case ModelPackage.CASE_DOCUMENT__RULES:
				return getRules();
			case ModelPackage.CASE_DOCUMENT__TECHNIQUES:
				return getTechniques();
			case ModelPackage.CASE_DOCUMENT__SHELF:
				return getShelf();
			case ModelPackage.CASE_DOCUMENT__DAY:
				return getDay();
			case ModelPackage.CASE_DOCUMENT__ACCESS:
				return getAccess();
			case ModelPackage.CASE_DOCUMENT__SYSTEM:
				return getSystem();
			case ModelPackage.CASE_DOCUMENT__PATH:
				return getPath();
			case ModelPackage.CASE_DOCUMENT__LESION:
				return getLesion();
			case ModelPackage.CASE_DOCUMENT__BRANCH:
				return getBranch();
			case ModelPackage.CASE_DOCUMENT__DELIVER:
				return getDeliver();
			case ModelPackage.CASE_DOCUMENT__FACTS:
				return getFacts();
			case ModelPackage.CASE_DOCUMENT__MEASURES:
				return getMeasures();
			case ModelPackage.CASE_DOCUMENT__PATIENT:
				return getPatient();
			case ModelPackage.CASE_DOCUMENT__AIM:
				return getAim();
			case ModelPackage.CASE_DOCUMENT__SPENT:
				return getSpent();
			case ModelPackage.CASE_DOCUMENT__LOG:
				return getLog();
			case ModelPackage.CASE_DOCUMENT__CLOSING:
				return getClosing();
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
			case ModelPackage.CASE_DOCUMENT__LIBRARIES:
				getLibraries().clear();
				getLibraries().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__RULES:
				setRules((String)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__TECHNIQUES:
				setTechniques((String)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__SHELF:
				setShelf((String)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__DAY:
				setDay((String)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__ACCESS:
				setAccess((Access)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__SYSTEM:
				setSystem((SystemInPlace)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__PATH:
				setPath((VesselPath)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__LESION:
				setLesion((Lesion)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__BRANCH:
				setBranch((SideBranch)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__DELIVER:
				setDeliver((String)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__FACTS:
				getFacts().clear();
				getFacts().addAll((Collection<? extends StatedFact>)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__MEASURES:
				setMeasures((LesionMeasures)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__PATIENT:
				setPatient((PatientFigures)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__AIM:
				setAim((CaseAim)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__SPENT:
				setSpent((Costs)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__LOG:
				getLog().clear();
				getLog().addAll((Collection<? extends LoggedAttempt>)newValue);
				return;
			case ModelPackage.CASE_DOCUMENT__CLOSING:
				setClosing((Closing)newValue);
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
			case ModelPackage.CASE_DOCUMENT__LIBRARIES:
				getLibraries().clear();
				return;
			case ModelPackage.CASE_DOCUMENT__RULES:
				setRules(RULES_EDEFAULT);
				return;
			case ModelPackage.CASE_DOCUMENT__TECHNIQUES:
				setTechniques(TECHNIQUES_EDEFAULT);
				return;
			case ModelPackage.CASE_DOCUMENT__SHELF:
				setShelf(SHELF_EDEFAULT);
				return;
			case ModelPackage.CASE_DOCUMENT__DAY:
				setDay(DAY_EDEFAULT);
				return;
			case ModelPackage.CASE_DOCUMENT__ACCESS:
				setAccess((Access)null);
				return;
			case ModelPackage.CASE_DOCUMENT__SYSTEM:
				setSystem((SystemInPlace)null);
				return;
			case ModelPackage.CASE_DOCUMENT__PATH:
				setPath((VesselPath)null);
				return;
			case ModelPackage.CASE_DOCUMENT__LESION:
				setLesion((Lesion)null);
				return;
			case ModelPackage.CASE_DOCUMENT__BRANCH:
				setBranch((SideBranch)null);
				return;
			case ModelPackage.CASE_DOCUMENT__DELIVER:
				setDeliver(DELIVER_EDEFAULT);
				return;
			case ModelPackage.CASE_DOCUMENT__FACTS:
				getFacts().clear();
				return;
			case ModelPackage.CASE_DOCUMENT__MEASURES:
				setMeasures((LesionMeasures)null);
				return;
			case ModelPackage.CASE_DOCUMENT__PATIENT:
				setPatient((PatientFigures)null);
				return;
			case ModelPackage.CASE_DOCUMENT__AIM:
				setAim((CaseAim)null);
				return;
			case ModelPackage.CASE_DOCUMENT__SPENT:
				setSpent((Costs)null);
				return;
			case ModelPackage.CASE_DOCUMENT__LOG:
				getLog().clear();
				return;
			case ModelPackage.CASE_DOCUMENT__CLOSING:
				setClosing((Closing)null);
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
			case ModelPackage.CASE_DOCUMENT__LIBRARIES:
				return libraries != null && !libraries.isEmpty();
			case ModelPackage.CASE_DOCUMENT__RULES:
				return RULES_EDEFAULT == null ? rules != null : !RULES_EDEFAULT.equals(rules);
			case ModelPackage.CASE_DOCUMENT__TECHNIQUES:
				return TECHNIQUES_EDEFAULT == null ? techniques != null : !TECHNIQUES_EDEFAULT.equals(techniques);
			case ModelPackage.CASE_DOCUMENT__SHELF:
				return SHELF_EDEFAULT == null ? shelf != null : !SHELF_EDEFAULT.equals(shelf);
			case ModelPackage.CASE_DOCUMENT__DAY:
				return DAY_EDEFAULT == null ? day != null : !DAY_EDEFAULT.equals(day);
			case ModelPackage.CASE_DOCUMENT__ACCESS:
				return access != null;
			case ModelPackage.CASE_DOCUMENT__SYSTEM:
				return system != null;
			case ModelPackage.CASE_DOCUMENT__PATH:
				return path != null;
			case ModelPackage.CASE_DOCUMENT__LESION:
				return lesion != null;
			case ModelPackage.CASE_DOCUMENT__BRANCH:
				return branch != null;
			case ModelPackage.CASE_DOCUMENT__DELIVER:
				return DELIVER_EDEFAULT == null ? deliver != null : !DELIVER_EDEFAULT.equals(deliver);
			case ModelPackage.CASE_DOCUMENT__FACTS:
				return facts != null && !facts.isEmpty();
			case ModelPackage.CASE_DOCUMENT__MEASURES:
				return measures != null;
			case ModelPackage.CASE_DOCUMENT__PATIENT:
				return patient != null;
			case ModelPackage.CASE_DOCUMENT__AIM:
				return aim != null;
			case ModelPackage.CASE_DOCUMENT__SPENT:
				return spent != null;
			case ModelPackage.CASE_DOCUMENT__LOG:
				return log != null && !log.isEmpty();
			case ModelPackage.CASE_DOCUMENT__CLOSING:
				return closing != null;
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
		result.append(" (libraries: ");
		result.append(libraries);
		result.append(", rules: ");
		result.append(rules);
		result.append(", techniques: ");
		result.append(techniques);
		result.append(", shelf: ");
		result.append(shelf);
		result.append(", day: ");
		result.append(day);
		result.append(", deliver: ");
		result.append(deliver);
		result.append(')');
		return result.toString();
	}

} //CaseDocumentImpl
